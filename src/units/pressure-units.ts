import { bar, footOfWater, inchOfWater, poundPerSquareInch, standardAtmosphere } from './conversion-factors.js'
import { caseSensitiveUnit, measuredQuantity, printedIn, unit } from './measured-quantity.js'

const psi = unit('psi', poundPerSquareInch, ['psig', 'lb/in2', 'lbs/in2', 'pounds per square inch'])
const kilopascals = unit('kPa', 1000, ['kPag'])

const water = ['wc', 'wg', 'H2O', 'of water', 'water column', 'of water column', 'water']
const inchesOfWater = unit('in wc', inchOfWater, [...columns('in'), ...columns('"'), ...columns('inches'), 'iwc'])
const feetOfWater = unit('ft wc', footOfWater, [...columns('ft'), ...columns("'"), ...columns('feet')])

const absolute = 'pressures are gauge pressures; take the atmosphere off and write psi'

export const pressureUnits = Object.freeze({
  pressure: measuredQuantity({
    spoken: 'a pressure',
    units: [
      psi,
      inchesOfWater,
      feetOfWater,
      unit('bar', bar, ['barg']),
      kilopascals,
      unit('Pa', 1),
      unit('mbar', bar / 1000),
      caseSensitiveUnit('MPa', 1e6),
    ],
    suggested: psi,
    least: -standardAtmosphere,
    leastBecause: 'no gauge pressure lies below a full vacuum',
    fractions: true,
    refused: { psia: absolute, bara: absolute, kpaa: absolute },
    printed: { ip: [printedIn(psi, 2)], si: [printedIn(kilopascals, 1)] },
  }),
})

function columns(height: string): readonly string[] {
  return water.map((word) => `${height} ${word}`)
}
