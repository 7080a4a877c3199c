import { btu, btuPerHour, fahrenheitDegree, foot, hour, squareFoot, therm } from './conversion-factors.js'
import { caseSensitiveUnit, measuredQuantity, printedIn, unit } from './measured-quantity.js'

const btuPerHourFoot = unit('Btu/h ft', btuPerHour / foot, [
  'Btu/hr ft',
  'Btuh/ft',
  'Btu/h/ft',
  'Btu/hr/ft',
  'Btu/(h ft)',
])
const wattsPerMeter = unit('W/m', 1)

const fahrenheitDays = unit('F days', fahrenheitDegree, ['F d', 'F day', 'degF days', 'degF d', 'HDD F'])
const kelvinDays = unit('K days', 1, ['K d', 'K day', 'C days', 'C d'])

const btuPerHourSquareFoot = unit('Btu/h ft2', btuPerHour / squareFoot, [
  'Btu/hr ft2',
  'Btuh/ft2',
  'Btu/h/ft2',
  'Btu/hr/ft2',
  'Btu/h sq ft',
  'Btu/hr sq ft',
  'Btuh/sq ft',
  'Btu/(h ft2)',
])
const wattsPerSquareMeter = unit('W/m2', 1)

const squareMeterKelvinPerWatt = unit('m2 K/W', 1)
const hourSquareFootFahrenheitPerBtu = unit('h ft2 F/Btu', (squareFoot * fahrenheitDegree) / btuPerHour, [
  'hr ft2 F/Btu',
  'h sq ft F/Btu',
  'hr sq ft F/Btu',
  'ft2 h F/Btu',
])

const btuPerHourFahrenheit = unit('Btu/h F', btuPerHour / fahrenheitDegree, [
  'Btu/hr F',
  'Btuh/F',
  'Btu/h/F',
  'Btu/(h F)',
  'Btu/h degF',
  'Btu/hr degF',
])
const wattsPerKelvin = unit('W/K', 1)

const therms = unit('therms', therm, ['therm'])
const kilowattHours = unit('kWh', 1000 * hour, ['kW h', 'kilowatt-hours'])

export const thermalUnits = Object.freeze({
  heatRatePerLength: measuredQuantity({
    spoken: 'a heat rate per length',
    units: [btuPerHourFoot, wattsPerMeter],
    suggested: btuPerHourFoot,
    least: 0,
    printed: { ip: [printedIn(btuPerHourFoot, 0)], si: [printedIn(wattsPerMeter, 0)] },
  }),
  heatFlux: measuredQuantity({
    spoken: 'a heat flux',
    units: [btuPerHourSquareFoot, wattsPerSquareMeter],
    suggested: btuPerHourSquareFoot,
    least: 0,
    printed: { ip: [printedIn(btuPerHourSquareFoot, 1)], si: [printedIn(wattsPerSquareMeter, 1)] },
  }),
  thermalResistance: measuredQuantity({
    spoken: 'a thermal resistance',
    units: [hourSquareFootFahrenheitPerBtu, squareMeterKelvinPerWatt],
    suggested: hourSquareFootFahrenheitPerBtu,
    least: 0,
    printed: { ip: [printedIn(hourSquareFootFahrenheitPerBtu, 2)], si: [printedIn(squareMeterKelvinPerWatt, 3)] },
  }),
  heatLossCoefficient: measuredQuantity({
    spoken: 'a heat loss coefficient',
    units: [btuPerHourFahrenheit, wattsPerKelvin],
    suggested: btuPerHourFahrenheit,
    least: 0,
    printed: { ip: [printedIn(btuPerHourFahrenheit, 0)], si: [printedIn(wattsPerKelvin, 1)] },
  }),
  degreeDays: measuredQuantity({
    spoken: 'degree days',
    units: [fahrenheitDays, kelvinDays],
    suggested: fahrenheitDays,
    least: 0,
    printed: { ip: [printedIn(fahrenheitDays, 0)], si: [printedIn(kelvinDays, 0)] },
  }),
  energy: measuredQuantity({
    spoken: 'an energy',
    units: [
      therms,
      kilowattHours,
      unit('Btu', btu),
      unit('MMBtu', 1e6 * btu),
      unit('kBtu', 1000 * btu),
      caseSensitiveUnit('MJ', 1e6),
      caseSensitiveUnit('GJ', 1e9),
      caseSensitiveUnit('kJ', 1000),
      caseSensitiveUnit('J', 1),
    ],
    suggested: therms,
    least: 0,
    refused: { mbtu: 'M may mean a thousand or a million here; write kBtu or MMBtu' },
    printed: { ip: [printedIn(therms, 1)], si: [printedIn(kilowattHours, 1)] },
  }),
})
