import { isSettled, type Answer } from '../facts/index.js'
import type { LeafField } from '../model/index.js'
import { printPair, printQuantity, type UnitSystem } from '../units/index.js'

/** An answer in words: a number with its unit, a bound, the spoken name of a choice. Unknown has none. */
export function printAnswer(answer: Answer, type: LeafField, system: UnitSystem): string | undefined {
  switch (answer.state) {
    case 'unknown':
      return undefined
    case 'word':
      return speak(answer.word, type)
    case 'list':
      return (
        [...answer.members.map((member) => speak(member, type)), ...(answer.complete ? [] : ['perhaps more'])].join(
          ', ',
        ) || 'nothing'
      )
    case 'number':
      return printNumber(answer, type, system)
    default:
      return neverAnswer(answer)
  }
}

/** A number beside the limit it is held against, with as many decimals as it takes to tell them apart. */
export function printBeside(
  answer: Answer,
  limit: Answer,
  type: LeafField,
  system: UnitSystem,
): readonly [string | undefined, string | undefined] {
  if (type.type === 'quantity' && isPoint(answer) && isPoint(limit))
    return printPair(answer.low, limit.low, type.quantity, system)
  return [printAnswer(answer, type, system), printAnswer(limit, type, system)]
}

function isPoint(answer: Answer): answer is Answer & { readonly state: 'number' } {
  return answer.state === 'number' && isSettled(answer) && Number.isFinite(answer.low)
}

function printNumber(answer: Answer & { readonly state: 'number' }, type: LeafField, system: UnitSystem): string {
  const { quantity } = type.type === 'quantity' ? type : { quantity: 'count' as const }
  const print = (value: number): string => printQuantity(value, quantity, system)
  if (isSettled(answer)) return print(answer.low)
  if (answer.low === -Infinity || (answer.low === 0 && Number.isFinite(answer.high)))
    return `at most ${print(answer.high)}`
  if (answer.high === Infinity) return `at least ${print(answer.low)}`
  return `${print(answer.low)} to ${print(answer.high)}`
}

/** The spoken name of a choice. */
export function speak(word: string, type: LeafField): string {
  const one = type.type === 'list' ? type.of : type
  return one.type === 'choice' && Object.hasOwn(one.choices, word) ? (one.choices[word] ?? word) : word
}

function neverAnswer(answer: never): never {
  throw new TypeError(`no such answer: ${String(answer)}`)
}
