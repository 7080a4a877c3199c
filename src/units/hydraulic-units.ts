import { foot, kvOfCv, minute } from './conversion-factors.js'
import { caseSensitiveUnit, measuredQuantity, printedIn, unit } from './measured-quantity.js'

const feetOfFluid = unit('ft', foot, ["'", 'feet', 'foot', 'ft of head', 'feet of head', 'ft head'])
const metersOfFluid = caseSensitiveUnit('m', 1, ['meter', 'meters', 'metre', 'metres', 'm of head'])

const cv = unit('Cv', kvOfCv)
const kv = unit('Kv', 1, ['Kvs'])

const feetPerSecond = unit('ft/s', foot, ['fps', 'ft/sec', 'feet/second'])
const metersPerSecond = unit('m/s', 1)

const columnOfWater = 'a head is the height of the fluid itself; write ft'

export const hydraulicUnits = Object.freeze({
  head: measuredQuantity({
    spoken: 'a head',
    units: [feetOfFluid, metersOfFluid],
    suggested: feetOfFluid,
    least: 0,
    refused: { ftwc: columnOfWater, fth2o: columnOfWater, ftofwater: columnOfWater },
    printed: { ip: [printedIn(feetOfFluid, 2)], si: [printedIn(metersOfFluid, 2)] },
  }),
  flowCoefficient: measuredQuantity({
    spoken: 'a flow coefficient',
    units: [cv, kv],
    suggested: cv,
    least: 0,
    printed: { ip: [printedIn(cv, 2)], si: [printedIn(kv, 2)] },
  }),
  velocity: measuredQuantity({
    spoken: 'a velocity',
    units: [feetPerSecond, metersPerSecond, unit('ft/min', foot / minute, ['fpm'])],
    suggested: feetPerSecond,
    least: 0,
    printed: { ip: [printedIn(feetPerSecond, 2)], si: [printedIn(metersPerSecond, 2)] },
  }),
})
