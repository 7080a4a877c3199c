import type { Context } from '../../facts/index.js'
import { building, site } from '../../model/index.js'
import {
  billConductance,
  billLoad,
  billLoadBand,
  cannotSize,
  crossCheck,
  monthDegreeDays,
  widestAgreement,
  type BillBand,
  type Sizing,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { askOnce } from '../ask-once.js'
import { chain } from './chain.js'
import { monthBillSizes } from './month-bill-sizes.js'
import { sizeLine, spreadLine, toldLine, type SizeLine, type Taking, type Untold } from './size-line.js'
import { climateMonths, degreeDaysBase, degreeDaysOfYear, monthFuels, saysMonths } from './weather.js'
import { zoneLoads } from './zone-loads.js'

/** What the fuel bills say of the house, beside what was worked out from its walls. */
export function billSizes(context: Context): readonly SizeLine[] {
  return [
    sizeLine({ name: 'degree days of a year' }, 'degreeDays', (take) => degreeDaysOfYear(context, take)),
    sizeLine({ name: 'heat lost for each degree, by the fuel of a year' }, 'heatLossCoefficient', (take) =>
      chain(degreeDaysOfYear(context, take), (degreeDays) =>
        billConductance({ ...billedHouse(context, take), degreeDays }),
      ),
    ),
    sizeLine({ name: 'load by the fuel of a year' }, 'heatRate', (take) => loadByFuel(context, take)),
    spreadLine({ name: 'load by the fuel of a year within its doubts' }, 'heatRate', {
      granted: ['efficiency off by 5 points, other uses by 20 %, and no heat needed from 3 F colder on'],
      calculate: (take) => bandOfYear(context, take),
    }),
    sizeLine({ name: 'load by the fuel above the load of the zones' }, 'fraction', (take) => compared(context, take)),
    toldLine({ name: 'fuel against zones' }, (take) => verdictOf(compared(context, take))),
    ...monthBillSizes(context),
  ]
}

function loadByFuel(context: Context, take: Taking): Sizing {
  const house = billedHouse(context, take)
  const { balance, designOutdoor } = ends(context, take)
  return chain(degreeDaysOfYear(context, take), (degreeDays) =>
    billLoad({ ...house, degreeDays, balance, designOutdoor }),
  )
}

function compared(context: Context, take: Taking): Sizing {
  return chain(zoneLoads(context, take), (rooms) =>
    chain(loadByFuel(context, take), (bills) => crossCheck({ rooms, bills })),
  )
}

function verdictOf(difference: Sizing): string | Untold {
  if (!difference.sized) return difference
  return Math.abs(difference.value) <= widestAgreement
    ? 'they agree within 25 %'
    : 'they differ by more than 25 %: one of the two is wrong'
}

/** How far each input may be off; common practice. */
const doubts = { efficiency: 0.05, otherEnergy: 0.2, balance: si('temperatureDifference', '3 F') } as const

function bandOfYear(context: Context, take: Taking): BillBand {
  const house = billedHouse(context, take)
  const { balance, designOutdoor } = ends(context, take)
  const days = daysOfHeating(context, take, balance)
  const degreeDays = degreeDaysOfYear(context, take)
  if (!degreeDays.sized) return { banded: false, why: degreeDays.why }
  if (!days.sized) return { banded: false, why: days.why }
  return billLoadBand(
    { ...house, degreeDays: degreeDays.value, balance, designOutdoor },
    { ...doubts, days: days.value },
  )
}

/** Days of a year with need of heat: what one degree of the base adds in degree days. */
function daysOfHeating(context: Context, take: Taking, base: number): Sizing {
  const pairs = climateMonths(context, take).map((month) => [
    monthDegreeDays({ ...month, base }),
    monthDegreeDays({ ...month, base: base - 1 }),
  ])
  const sums = pairs.flat()
  for (const sum of sums) if (!sum.sized) return cannotSize(sum.why)
  const [warm = 0, cool = 0] = [0, 1].map((at) =>
    pairs.reduce((total, pair) => total + (pair[at]?.sized === true ? pair[at].value : 0), 0),
  )
  return { sized: true, value: warm - cool, working: [], assumed: [], valid: true }
}

function billedHouse(
  context: Context,
  take: Taking,
): { readonly energy: number; readonly otherEnergy: number; readonly efficiency: number } {
  return {
    energy: fuelOfYear(context, take),
    otherEnergy: take.number(askOnce(context, building, 'fuelForOtherUses')),
    efficiency: take.number(askOnce(context, building, 'seasonEfficiency')),
  }
}

/** The fuel of a year as it is stated, or else of its months. */
function fuelOfYear(context: Context, take: Taking): number {
  const told = askOnce(context, building, 'fuelOfYear')
  if (told.state === 'number' || !saysMonths(context, { section: building, group: 'fuelOfMonths' }))
    return take.number(told)
  return monthFuels(context, take).reduce((sum, { value }) => sum + value, 0)
}

/** Sun and people keep the house warm from the base of the degree days on: that is what a base is chosen for. */
function ends(context: Context, take: Taking): { readonly balance: number; readonly designOutdoor: number } {
  return {
    balance: degreeDaysBase(context, take),
    designOutdoor: take.number(askOnce(context, site, 'outdoorDesign')),
  }
}
