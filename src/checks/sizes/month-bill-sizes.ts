import type { Context } from '../../facts/index.js'
import { building, site } from '../../model/index.js'
import {
  cannotSize,
  energySignature,
  signatureLoad,
  sized,
  variableBase,
  type BillBand,
  type HeatingPeriod,
  type Signature,
  type Sizing,
  type VariableBaseFit,
} from '../../sizing/index.js'
import { secondsPerDay, si } from '../../units/index.js'
import { askOnce } from '../ask-once.js'
import { sizeLine, spreadLine, type SizeLine, type Taking } from './size-line.js'
import { climateMonths, degreeDaysBase, monthFuels } from './weather.js'

/** What the bills of the months say: summer bills tell the other uses, winter bills the house. */
export function monthBillSizes(context: Context): readonly SizeLine[] {
  return [
    sizeLine({ name: 'outdoor temperature from which no heat is needed, by the months' }, 'temperature', (take) =>
      sizingOf(fitOf(context, take)?.balance),
    ),
    sizeLine({ name: 'fuel for other uses, by the months' }, 'heatRate', (take) =>
      sizingOf(fitOf(context, take)?.otherUses),
    ),
    sizeLine({ name: 'load by the cold months' }, 'heatRate', (take) => loadBySignature(context, take)),
    spreadLine({ name: 'load by the cold months, 95 times of 100' }, 'heatRate', {
      granted: [],
      calculate: (take) => bandOfSignature(context, take),
    }),
  ]
}

/** Tried as bases: every degree that people keep houses without heat at. */
const bases = Array.from({ length: 31 }, (_, step) => si('temperature', '45 F') + (step * 5) / 9)

function fitOf(context: Context, take: Taking): VariableBaseFit | undefined {
  const months = billedMonths(context, take)
  return months.length === 0 ? undefined : variableBase(months, bases)
}

const sizingOf = (sizing: Sizing | undefined): Sizing => sizing ?? cannotSize('No month is billed.')

interface BilledMonth {
  readonly days: number
  readonly mean: number
  readonly spread: number
  readonly energy: number
}

/** Months with bill and weather; none as long as one of them is not known. */
function billedMonths(context: Context, take: Taking): readonly BilledMonth[] {
  const fuels = new Map(monthFuels(context, take).map(({ name, value }) => [name, value]))
  const months = climateMonths(context, take).map(({ name, ...month }) => ({
    ...month,
    energy: fuels.get(name) ?? NaN,
  }))
  return months.some(({ mean, spread, energy }) => Number.isNaN(mean + spread + energy)) ? [] : months
}

/** The house by the months in which nearly every day is heated. */
function signatureOf(context: Context, take: Taking): Signature {
  const base = degreeDaysBase(context, take)
  const efficiency = take.number(askOnce(context, building, 'seasonEfficiency'))
  const months = billedMonths(context, take)
  const other = otherUses(context, take, months)
  if (!other.sized) return { fitted: false, why: other.why }
  const periods = months
    .filter(({ mean, spread }) => mean <= base - spread)
    .map(({ days, mean, energy }): HeatingPeriod => {
      const fuel = Math.max(0, energy / (days * secondsPerDay) - other.value)
      return { outdoor: mean, load: fuel * efficiency }
    })
  return energySignature(periods)
}

/** As stated, or else as the summer bills tell. */
function otherUses(context: Context, take: Taking, months: readonly BilledMonth[]): Sizing {
  const told = askOnce(context, building, 'fuelForOtherUses')
  if (told.state === 'number')
    return sized({ value: take.number(told) / (365.25 * secondsPerDay), working: [], assumed: [], valid: true })
  return months.length === 0 ? cannotSize('No month is billed.') : variableBase(months, bases).otherUses
}

function loadBySignature(context: Context, take: Taking): Sizing {
  const outdoor = take.number(askOnce(context, site, 'outdoorDesign'))
  const told = signatureOf(context, take)
  if (!told.fitted) return cannotSize(told.why)
  const { conductance, balance, fit } = told.signature
  const value = signatureLoad(told.signature, outdoor).likely
  return sized({
    value,
    working: [
      { name: 'heat lost for each degree', value: conductance, unit: 'W/K' },
      { name: 'outdoor temperature from which no heat is needed', value: balance, unit: 'K' },
      { name: 'r2', value: fit, unit: '1' },
      { name: 'load on the design day', value, unit: 'W' },
    ],
    assumed: ['the months were as cold as usual', 'other uses are the same all year'],
    valid: fit >= goodFit,
  })
}

/** Below it something else than the cold drives the fuel; common practice. */
const goodFit = 0.8

function bandOfSignature(context: Context, take: Taking): BillBand {
  const outdoor = take.number(askOnce(context, site, 'outdoorDesign'))
  const told = signatureOf(context, take)
  if (!told.fitted) return { banded: false, why: told.why }
  return { banded: true, band: signatureLoad(told.signature, outdoor) }
}
