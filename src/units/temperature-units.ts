import { celsiusAtAbsoluteZero, fahrenheitAtAbsoluteZero, fahrenheitDegree } from './conversion-factors.js'
import { measuredQuantity, printedIn, unit } from './measured-quantity.js'

const fahrenheitSpellings = ['degF', 'F°', 'degrees F', 'fahrenheit']
const celsiusSpellings = ['degC', 'C°', 'degrees C', 'celsius']

const fahrenheit = unit('F', fahrenheitDegree, fahrenheitSpellings, fahrenheitAtAbsoluteZero)
const celsius = unit('C', 1, celsiusSpellings, celsiusAtAbsoluteZero)
const kelvin = unit('K', 1, ['kelvin'])

const fahrenheitSteps = unit('F', fahrenheitDegree, fahrenheitSpellings)
const celsiusSteps = unit('C', 1, celsiusSpellings)

export const temperatureUnits = Object.freeze({
  temperature: measuredQuantity({
    spoken: 'a temperature',
    units: [fahrenheit, celsius, kelvin],
    suggested: fahrenheit,
    least: 0,
    leastBecause: 'nothing is colder than absolute zero',
    printed: { ip: [printedIn(fahrenheit, 1)], si: [printedIn(celsius, 1)] },
  }),
  temperatureDifference: measuredQuantity({
    spoken: 'a temperature difference',
    units: [fahrenheitSteps, kelvin, celsiusSteps],
    suggested: fahrenheitSteps,
    printed: { ip: [printedIn(fahrenheitSteps, 1)], si: [printedIn(kelvin, 1)] },
  }),
})
