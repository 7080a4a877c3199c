import { cubicFoot, cubicInch, foot, gallon, inch, liter, quart, squareFoot, squareInch } from './conversion-factors.js'
import { caseSensitiveUnit, measuredQuantity, printedIn, unit } from './measured-quantity.js'

const inches = unit('in', inch, ['"', 'inch', 'inches'])
const feet = unit('ft', foot, ["'", 'foot', 'feet'])
const meters = caseSensitiveUnit('m', 1, ['meter', 'meters', 'metre', 'metres'])
const millimeters = unit('mm', 0.001, ['millimeter', 'millimeters'])
const centimeters = unit('cm', 0.01, ['centimeter', 'centimeters'])

const squareInches = unit('in2', squareInch, ['sq in', 'square inches'])
const squareFeet = unit('ft2', squareFoot, ['sq ft', 'sf', 'square feet'])
const squareMeters = unit('m2', 1, ['sq m'])
const squareCentimeters = unit('cm2', 1e-4)
const squareMillimeters = unit('mm2', 1e-6)

const gallons = unit('gal', gallon, ['gallon', 'gallons', 'US gal', 'gals'])
const quarts = unit('qt', quart, ['quart', 'quarts'])
const liters = unit('L', liter, ['liter', 'liters', 'litre', 'litres'])
const milliliters = caseSensitiveUnit('mL', liter / 1000, ['ml'])
const cubicMeters = unit('m3', 1, ['cu m'])
const cubicFeet = unit('ft3', cubicFoot, ['cu ft', 'cf', 'cubic feet'])
const cubicInches = unit('in3', cubicInch, ['cu in'])

const inchesPerFoot = unit('in/ft', inch / foot, ['"/ft', '"/foot', 'in/foot', 'inch/foot', "in/'", `"/'`])
const feetPerFoot = unit('ft/ft', 1)
const millimetersPerMeter = unit('mm/m', 0.001)
const centimetersPerMeter = unit('cm/m', 0.01)
const metersPerMeter = unit('m/m', 1)
const percentOfRun = unit('%', 0.01, ['percent'])

const nominalInches = unit('in', 1, ['"', 'inch', 'inches'])

export const sizeUnits = Object.freeze({
  length: measuredQuantity({
    spoken: 'a length',
    units: [inches, feet, meters, millimeters, centimeters],
    suggested: inches,
    least: 0,
    fractions: true,
    printed: {
      ip: [printedIn(inches, 1), printedIn(feet, 1, 10 * foot)],
      si: [printedIn(millimeters, 0), printedIn(meters, 2, 1)],
    },
  }),
  area: measuredQuantity({
    spoken: 'an area',
    units: [squareFeet, squareInches, squareMeters, squareCentimeters, squareMillimeters],
    suggested: squareFeet,
    least: 0,
    fractions: true,
    printed: {
      ip: [printedIn(squareInches, 1), printedIn(squareFeet, 1, squareFoot)],
      si: [printedIn(squareCentimeters, 0), printedIn(squareMeters, 2, 0.1)],
    },
  }),
  volume: measuredQuantity({
    spoken: 'a volume',
    units: [gallons, liters, cubicMeters, cubicFeet, quarts, cubicInches, milliliters],
    suggested: gallons,
    least: 0,
    fractions: true,
    // A thousand gallons and more is the air of a room, which nobody counts in gallons.
    printed: {
      ip: [printedIn(gallons, 2), printedIn(cubicFeet, 0, 1000 * gallon)],
      si: [printedIn(liters, 1), printedIn(cubicMeters, 2, 1000 * gallon)],
    },
  }),
  slope: measuredQuantity({
    spoken: 'a slope',
    units: [inchesPerFoot, percentOfRun, millimetersPerMeter, centimetersPerMeter, metersPerMeter, feetPerFoot],
    suggested: inchesPerFoot,
    fractions: true,
    printed: { ip: [printedIn(inchesPerFoot, 3)], si: [printedIn(millimetersPerMeter, 1)] },
  }),
  nominalSize: measuredQuantity({
    spoken: 'a nominal size',
    units: [nominalInches],
    suggested: nominalInches,
    least: 0,
    fractions: true,
    readsBareNumber: true,
    printed: { ip: [printedIn(nominalInches, 3)], si: [printedIn(nominalInches, 3)] },
  }),
})
