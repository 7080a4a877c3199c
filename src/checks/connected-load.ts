import { atLeastZero, fact, rebound, type Answer, type Context } from '../facts/index.js'
import { fuel, fuelBurner, gasMeter, quantity, type Thing } from '../model/index.js'
import { uncounted } from './uncounted.js'
import { askOnce } from './ask-once.js'

/**
 * Gas that all appliances behind the meter burn at once, at the heating value of the fuel.
 *
 * Where there is more than one meter, nobody says which appliance is whose: then it is at most that of all. Appliances that
 * are not listed, or whose input is not known, can only add.
 */
export const connectedLoad = fact('connectedLoad', { of: gasMeter, type: quantity('gasFlow'), read })

function read(context: Context): Answer {
  const { listed } = context
  const heatingValue = askOnce(context, fuel, 'heatingValue')
  const [burners, meters] = [listed(fuelBurner), listed(gasMeter)]
  const inputs = burners.things.map((burner) => inputOf(context, burner))
  const heat = atLeastZero(heatingValue)
  const sole = meters.things.length + meters.more === 1
  const least = sole ? volumeOf(sum(inputs.map(({ low }) => low)), heat.high) : 0
  const most = burners.more > 0 ? Infinity : volumeOf(sum(inputs.map(({ high }) => high)), heat.low)
  const missing = [
    ...inputs.flatMap((one) => one.missing),
    ...heatingValue.missing,
    ...uncounted(fuelBurner, burners.more),
    ...(sole ? [] : [{ subject: gasMeter.name, fact: 'count' }]),
  ]
  return { ...rebound([], least, most), missing: least === most ? [] : missing }
}

const sum = (terms: readonly number[]): number => terms.reduce((one, other) => one + other, 0)
/** No heat takes no gas, whatever the gas holds. */
const volumeOf = (heat: number, heatingValue: number): number => (heat === 0 ? 0 : heat / heatingValue)

interface Input {
  readonly low: number
  readonly high: number
  readonly missing: Answer['missing']
}

/** Oil burns no gas; a burner of which nobody knows the fuel may. */
function inputOf({ ask }: Context, burner: Thing): Input {
  const [burns, input] = [ask('fuel', burner), ask('input', burner)]
  if (burns.state === 'word' && burns.word === 'oil') return { low: 0, high: 0, missing: [] }
  const { low, high } = atLeastZero(input)
  const missing = [...burns.missing, ...input.missing]
  return { low: burns.state === 'word' ? low : 0, high, missing }
}
