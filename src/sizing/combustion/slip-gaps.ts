import { analyzerSettings, type FuelName } from '../../tables/index.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'
import { carbonDioxideFromOxygen } from './carbon-dioxide-from-oxygen.js'
import { carbonMonoxideAirFree } from './carbon-monoxide-air-free.js'
import { dryFlueLoss } from './dry-flue-loss.js'

/** What an analyzer has printed; what it has not is left out. Shares are of the dry sample. */
export interface PrintedSlip {
  readonly fuel: Exclude<FuelName, 'methane'>
  readonly oxygen: number
  readonly carbonDioxide?: number | undefined
  readonly carbonMonoxide?: number | undefined
  readonly carbonMonoxideAirFree?: number | undefined
  /** Share of air beyond what the gas needs. */
  readonly excessAir?: number | undefined
  /** K */
  readonly flueTemperature?: number | undefined
  /** K, of the combustion air. */
  readonly airTemperature?: number | undefined
  /** K, of the water that enters the boiler. */
  readonly returnTemperature?: number | undefined
  /** Part of the net heat, without condensing. */
  readonly flueLoss?: number | undefined
}

/** One figure of a slip set against what its other figures make of it. */
export interface SlipGap {
  readonly figure: 'carbonDioxide' | 'carbonMonoxideAirFree' | 'excessAir' | 'flueLoss' | 'flueTemperature'
  /** Printed less expected, in the unit of the figure; for the flue temperature flue less return, below zero impossible. */
  readonly gap: Sizing
}

/**
 * Sets the figures of a printed slip against each other: an analyzer measures oxygen and temperatures and calculates the rest,
 * so a large gap means a leak in the sample, a wrong fuel setting or a slip that was not printed by one machine.
 *
 * @returns a gap for each figure that can be told from the others
 *
 * @example
 * slipGaps({ fuel: 'natural-gas', oxygen: 0.048, carbonDioxide: 0.106 })[0]?.gap // value 0.0151
 */
export function slipGaps(slip: PrintedSlip): readonly SlipGap[] {
  return [...carbonDioxideGap(slip), ...monoxideGap(slip), ...excessAirGap(slip), ...lossGap(slip), ...flueGap(slip)]
}

function carbonDioxideGap({ fuel, oxygen, carbonDioxide }: PrintedSlip): readonly SlipGap[] {
  if (carbonDioxide === undefined) return []
  const { mostCarbonDioxide } = analyzerSettings(fuel)
  const expected = carbonDioxideFromOxygen({ oxygen, mostCarbonDioxide })
  return [{ figure: 'carbonDioxide', gap: against(carbonDioxide, expected, '1') }]
}

function monoxideGap({ oxygen, carbonMonoxide, carbonMonoxideAirFree: printed }: PrintedSlip): readonly SlipGap[] {
  if (carbonMonoxide === undefined || printed === undefined) return []
  const expected = carbonMonoxideAirFree({ carbonMonoxide, oxygen })
  return [{ figure: 'carbonMonoxideAirFree', gap: against(printed, expected, '1') }]
}

/** Analyzers take excess air from the oxygen alone: O2 / (20.9 - O2), some 10 % above stoichiometry. */
function excessAirGap({ oxygen, excessAir: printed }: PrintedSlip): readonly SlipGap[] {
  if (printed === undefined) return []
  const diluted = carbonDioxideFromOxygen({ oxygen, mostCarbonDioxide: 1 })
  if (!diluted.sized || diluted.value === 0) {
    return [
      {
        figure: 'excessAir',
        gap: cannotSize(`Oxygen of ${oxygen * 100} % leaves no flue gas to tell the excess air from.`),
      },
    ]
  }
  const value = 1 / diluted.value - 1
  const expected = sized({ ...diluted, value, working: [{ name: 'excess air from the oxygen', value, unit: '1' }] })
  return [{ figure: 'excessAir', gap: against(printed, expected, '1') }]
}

function lossGap({ fuel, oxygen, flueTemperature, airTemperature, flueLoss }: PrintedSlip): readonly SlipGap[] {
  if (flueLoss === undefined || flueTemperature === undefined || airTemperature === undefined) return []
  const expected = dryFlueLoss({ settings: analyzerSettings(fuel), flueTemperature, airTemperature, oxygen })
  return [{ figure: 'flueLoss', gap: against(flueLoss, expected, '1') }]
}

/** Water that enters the boiler is the coldest thing its flue gas meets. */
function flueGap({ flueTemperature, returnTemperature }: PrintedSlip): readonly SlipGap[] {
  if (flueTemperature === undefined || returnTemperature === undefined) return []
  const working = [{ name: 'return', value: returnTemperature, unit: 'K' }]
  const expected = sized({ value: returnTemperature, working, assumed: [], valid: true })
  return [{ figure: 'flueTemperature', gap: against(flueTemperature, expected, 'K') }]
}

function against(printed: number, expected: Sizing, unit: string): Sizing {
  if (!expected.sized) return expected
  if (!Number.isFinite(printed)) return cannotSize(`A slip cannot print ${printed}.`)
  const value = printed - expected.value
  return sized({
    ...expected,
    value,
    working: [
      ...expected.working,
      { name: 'printed', value: printed, unit },
      { name: 'printed less expected', value, unit },
    ],
  })
}
