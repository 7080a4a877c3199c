import { grainPerGallon, ounce, pound } from './conversion-factors.js'
import { caseSensitiveUnit, measuredQuantity, printedIn, unit } from './measured-quantity.js'

const percent = unit('%', 0.01, ['percent', 'pct'])
const partsPerMillion = unit('ppm', 1e-6)
// Of what is dissolved in water: a liter of it is taken as a kilogram.
const milligramsPerLiter = unit('mg/L', 1e-6)
const grainsPerGallon = unit('gpg', grainPerGallon, ['gr/gal', 'grains/gal', 'grains/gallon'])
const pounds = unit('lb', pound, ['lbs', 'pound', 'pounds'])
const kilograms = unit('kg', 1)
const volts = unit('V', 1, ['volt', 'volts', 'VAC', 'VDC'])
const amperes = unit('A', 1, ['amp', 'amps', 'ampere', 'amperes'])

export const otherUnits = Object.freeze({
  fraction: measuredQuantity({
    spoken: 'a fraction',
    units: [percent],
    suggested: percent,
    least: 0,
    printed: { ip: [printedIn(percent, 1)], si: [printedIn(percent, 1)] },
  }),
  concentration: measuredQuantity({
    spoken: 'a concentration',
    units: [partsPerMillion, milligramsPerLiter, grainsPerGallon],
    suggested: partsPerMillion,
    least: 0,
    printed: { ip: [printedIn(partsPerMillion, 0)], si: [printedIn(partsPerMillion, 0)] },
  }),
  mass: measuredQuantity({
    spoken: 'a mass',
    units: [pounds, kilograms, unit('oz', ounce, ['ounce', 'ounces']), unit('g', 0.001)],
    suggested: pounds,
    least: 0,
    fractions: true,
    printed: { ip: [printedIn(pounds, 1)], si: [printedIn(kilograms, 2)] },
  }),
  voltage: measuredQuantity({
    spoken: 'a voltage',
    units: [volts, caseSensitiveUnit('mV', 0.001)],
    suggested: volts,
    printed: { ip: [printedIn(volts, 1)], si: [printedIn(volts, 1)] },
  }),
  current: measuredQuantity({
    spoken: 'a current',
    units: [amperes, caseSensitiveUnit('mA', 0.001)],
    suggested: amperes,
    printed: { ip: [printedIn(amperes, 2)], si: [printedIn(amperes, 2)] },
  }),
})
