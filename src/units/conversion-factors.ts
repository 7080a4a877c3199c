/**
 * Size of the trade's units in the units amounts are held in. The foot, gallon, pound, Btu (International Table) and
 * degree are exact by definition, the others follow from them; source NIST SP 811, appendix B, recalled. The water
 * column is the conventional one at 4 C. The boiler horsepower is the rounded figure of the trade's conversion tables. The
 * therm is 100,000 Btu of the International Table.
 */
export const inch = 0.0254
export const foot = 0.3048
export const squareInch = 0.00064516
export const squareFoot = 0.09290304
export const cubicInch = 0.000016387064
export const cubicFoot = 0.028316846592
export const liter = 0.001
export const gallon = 0.003785411784
export const quart = gallon / 4
export const pound = 0.45359237
export const ounce = pound / 16
export const poundPerSquareInch = 6894.757293168
export const inchOfWater = 249.08891
export const footOfWater = 2989.06692
export const bar = 100_000
export const standardAtmosphere = 101_325
export const btu = 1055.05585262
export const btuPerHour = btu / 3600
export const therm = 100_000 * btu
export const boilerHorsepower = 33_475 * btuPerHour
export const fahrenheitDegree = 5 / 9
export const fahrenheitAtAbsoluteZero = -459.67
export const celsiusAtAbsoluteZero = -273.15
export const minute = 60
export const hour = 3600
/** Seconds in a day: dates are held in days, times in seconds. */
export const secondsPerDay = 86_400
/** The average year of 365.25 days, and its twelfth part: 24 months are 730.5 days. */
export const year = 365.25 * secondsPerDay
export const month = year / 12
/** Kv of a valve with a Cv of 1: gpm at 1 psi, as m3/h at 1 bar. */
export const kvOfCv = (gallon * (hour / minute)) / Math.sqrt(poundPerSquareInch / bar)
/** Milligrams in a liter of water, by the kilogram that a liter weighs, are millionths; a grain in a gallon is so many. */
export const grainPerGallon = (pound / 7000 / gallon) * 1e-3
