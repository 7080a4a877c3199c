import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import type { Spread } from './spread.js'

/** Fuel of a period and the weather it went into. */
export interface FuelBill {
  /** J burned in the period, gross. */
  readonly energy: number
  /** J of it for hot water, cooking and drying. */
  readonly otherEnergy: number
  /** Part of the burned heat that reached the house, 0 to 1. */
  readonly efficiency: number
  /** K days below the balance temperature. */
  readonly degreeDays: number
}

interface BilledHouse extends FuelBill {
  /** K outdoors from which no heat is needed: the base of the degree days. */
  readonly balance: number
  /** K outdoors on the coldest design day. */
  readonly designOutdoor: number
}

/**
 * Conductance of a house as its bills show it.
 *
 * @returns W/K
 *
 * @example
 * // 180 therms at 80 % over 1,517 F days
 * billConductance({ energy: 18.991e9, otherEnergy: 0, efficiency: 0.8, degreeDays: 842.8 }) // value 208.6
 */
export function billConductance({ energy, otherEnergy, efficiency, degreeDays }: FuelBill): Sizing {
  const why = firstImpossible(
    ['fuel of the period', energy, 'zero or more'],
    ['fuel for other uses', otherEnergy, 'zero or more'],
    ['efficiency', efficiency, 'a share'],
    ['degree days', degreeDays, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  if (otherEnergy > energy) return cannotSize(`Other uses cannot take ${otherEnergy} J of ${energy} J.`)
  const heat = (energy - otherEnergy) * efficiency
  const value = heat / (degreeDays * secondsOfDay)
  return sized({
    value,
    working: [
      { name: 'fuel for heating', value: energy - otherEnergy, unit: 'J' },
      { name: 'heat to the house', value: heat, unit: 'J' },
      { name: 'degree days', value: degreeDays, unit: 'K d' },
      { name: 'conductance by the bill', value, unit: 'W/K' },
    ],
    assumed: ['indoors as warm as usual in the period'],
    valid: true,
  })
}

/**
 * Load of a house on the design day as its bills show it.
 *
 * @returns W
 *
 * @example
 * // the same house, 65 F and -8 F: 28,873 Btu/h
 * billLoad({ energy: 18.991e9, otherEnergy: 0, efficiency: 0.8, degreeDays: 842.8, balance: 291.48, designOutdoor: 250.93 })
 * // value 8460
 */
export function billLoad({ balance, designOutdoor, ...bill }: BilledHouse): Sizing {
  const why = firstImpossible(
    ['balance temperature', balance, 'above zero'],
    ['outdoor design temperature', designOutdoor, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const conductance = billConductance(bill)
  if (!conductance.sized) return conductance
  const value = conductance.value * Math.max(0, balance - designOutdoor)
  return sized({
    ...conductance,
    value,
    working: [
      ...conductance.working,
      { name: 'balance temperature above the design day', value: balance - designOutdoor, unit: 'K' },
      { name: 'load by the bill', value, unit: 'W' },
    ],
    valid: conductance.valid && balance > designOutdoor,
  })
}

interface Doubts {
  /** Points by which the efficiency may be off to either side: common practice 0.05. */
  readonly efficiency: number
  /** Share by which the fuel for other uses may be off: common practice 0.2. */
  readonly otherEnergy: number
  /** K by which the balance temperature may be off: common practice 1.7. */
  readonly balance: number
  /** Days of the period in which the house was heated: one degree of balance is so many degree days. */
  readonly days: number
}

/** A load between its bounds, or why there is none. */
export type BillBand =
  { readonly banded: true; readonly band: Spread } | { readonly banded: false; readonly why: string }

/**
 * Load by the bills with what remains open: each doubt moved alone, and the moves added by their squares. Usually 15 %.
 *
 * @returns W
 */
export function billLoadBand(house: BilledHouse, doubts: Doubts): BillBand {
  const why = firstImpossible(
    ['doubt of the efficiency', doubts.efficiency, 'a share'],
    ['doubt of the fuel for other uses', doubts.otherEnergy, 'a share'],
    ['doubt of the balance temperature', doubts.balance, 'zero or more'],
    ['days of heating', doubts.days, 'zero or more'],
  )
  if (why !== undefined) return { banded: false, why }
  const likely = billLoad(house)
  if (!likely.sized) return { banded: false, why: likely.why }
  const moved: readonly BilledHouse[] = [
    { ...house, efficiency: Math.min(1, house.efficiency + doubts.efficiency) },
    { ...house, otherEnergy: house.otherEnergy * (1 - doubts.otherEnergy) },
    {
      ...house,
      balance: house.balance - doubts.balance,
      degreeDays: Math.max(house.degreeDays / 2, house.degreeDays - doubts.balance * doubts.days),
    },
  ]
  const off = Math.hypot(...moved.map((one) => apart(billLoad(one), likely.value)))
  return {
    banded: true,
    band: { low: Math.max(0, likely.value - off), likely: likely.value, high: likely.value + off },
  }
}

function apart(moved: Sizing, likely: number): number {
  return moved.sized ? moved.value - likely : 0
}

interface MeasuredLoad {
  /** W on average over a cold spell. */
  readonly meanLoad: number
  /** K outdoors on average over it. */
  readonly meanOutdoor: number
  /** K */
  readonly balance: number
  /** K */
  readonly designOutdoor: number
}

/**
 * Load on the design day from a mean load that was measured in other weather.
 *
 * @returns W
 *
 * @example
 * // 28,000 Btu/h at 6 F, balance 65 F, design -19 F: 39,900 Btu/h
 * loadFromMean({ meanLoad: 8206, meanOutdoor: 258.71, balance: 291.48, designOutdoor: 244.82 }) // value 11684
 */
export function loadFromMean({ meanLoad, meanOutdoor, balance, designOutdoor }: MeasuredLoad): Sizing {
  const why = firstImpossible(
    ['mean load', meanLoad, 'zero or more'],
    ['mean outdoor temperature', meanOutdoor, 'above zero'],
    ['outdoor design temperature', designOutdoor, 'above zero'],
    ['balance temperature above the mean outdoor temperature', balance - meanOutdoor, 'above zero'],
  )
  if (why !== undefined) return cannotSize(why)
  const conductance = meanLoad / (balance - meanOutdoor)
  const value = conductance * Math.max(0, balance - designOutdoor)
  return sized({
    value,
    working: [
      { name: 'conductance as measured', value: conductance, unit: 'W/K' },
      { name: 'balance temperature above the design day', value: balance - designOutdoor, unit: 'K' },
      { name: 'load', value, unit: 'W' },
    ],
    assumed: ['the load is straight in the outdoor temperature'],
    valid: balance > designOutdoor,
  })
}

const secondsOfDay = 86_400
