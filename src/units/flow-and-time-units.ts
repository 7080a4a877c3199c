import { cubicFoot, gallon, hour, liter, minute, month, secondsPerDay, year } from './conversion-factors.js'
import { measuredQuantity, printedIn, type PrintSteps, unit } from './measured-quantity.js'

const gallonsPerMinute = unit('gpm', gallon / minute, ['gal/min', 'gal/minute', 'gallons/minute', 'US gpm'])
const litersPerSecond = unit('L/s', liter, ['lps'])
const cubicMetersPerHour = unit('m3/h', 1 / hour)
// Gas in cubic feet at 60 F, the state in which codes and meters count it.
const cubicFeetPerHour = unit('cfh', cubicFoot / hour, [
  'ft3/h',
  'ft3/hr',
  'cu ft/h',
  'cu ft/hr',
  'cubic feet/hour',
  'scfh',
])
const flowUnits = [
  gallonsPerMinute,
  litersPerSecond,
  unit('L/min', liter / minute, ['lpm']),
  unit('L/h', liter / hour),
  cubicMetersPerHour,
  unit('m3/s', 1),
  unit('gph', gallon / hour, ['gal/h', 'gal/hr']),
  cubicFeetPerHour,
  unit('cfm', cubicFoot / minute, ['ft3/min', 'cu ft/min']),
]

const seconds = unit('s', 1, ['sec', 'secs', 'second', 'seconds'])
const minutes = unit('min', minute, ['mins', 'minute', 'minutes'])
const hours = unit('h', hour, ['hr', 'hrs', 'hour', 'hours'])
const days = unit('days', secondsPerDay, ['d', 'day'])
const weeks = unit('weeks', 7 * secondsPerDay, ['wk', 'week'])
const months = unit('months', month, ['mo', 'month'])
const years = unit('years', year, ['yr', 'yrs', 'year'])

// Each unit of time is printed from two of it on, so that the plural is right and 90 min stays 90 min.
const timeSteps: PrintSteps = [
  printedIn(seconds, 1),
  printedIn(minutes, 1, 2 * minute),
  printedIn(hours, 1, 2 * hour),
  printedIn(days, 1, 2 * secondsPerDay),
  printedIn(months, 1, 2 * month),
  printedIn(years, 1, 2 * year),
]

export const flowAndTimeUnits = Object.freeze({
  volumeFlow: measuredQuantity({
    spoken: 'a volume flow',
    units: flowUnits,
    suggested: gallonsPerMinute,
    least: 0,
    fractions: true,
    printed: { ip: [printedIn(gallonsPerMinute, 2)], si: [printedIn(litersPerSecond, 3)] },
  }),
  gasFlow: measuredQuantity({
    spoken: 'a gas flow',
    units: flowUnits,
    suggested: cubicFeetPerHour,
    least: 0,
    fractions: true,
    printed: { ip: [printedIn(cubicFeetPerHour, 1)], si: [printedIn(cubicMetersPerHour, 2)] },
  }),
  time: measuredQuantity({
    spoken: 'a time',
    units: [minutes, seconds, hours, days, weeks, months, years],
    suggested: minutes,
    least: 0,
    fractions: true,
    printed: { ip: timeSteps, si: timeSteps },
  }),
})
