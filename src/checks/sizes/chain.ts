import { cannotSize, firstImpossible, sized, type Sizing, type Step } from '../../sizing/index.js'

/** Goes on from one calculation to the next: the steps and assumptions of both stay, and an impossible number ends it. */
export function chain(first: Sizing, next: (value: number) => Sizing): Sizing {
  if (!first.sized) return first
  const second = next(first.value)
  if (!second.sized) return second
  return sized({
    value: second.value,
    working: [...first.working, ...second.working],
    assumed: [...new Set([...first.assumed, ...second.assumed])],
    valid: first.valid && second.valid,
  })
}

/** A number as it is stated, as the first link of a chain. */
export function stated(name: string, value: number, unit: string): Sizing {
  return sized({ value, working: [{ name, value, unit }], assumed: [], valid: true })
}

/** A sum with every term. */
export function addedUp(name: string, terms: readonly Step[], unit: string): Sizing {
  const value = terms.reduce((sum, term) => sum + term.value, 0)
  return sized({ value, working: [...terms, { name, value, unit }], assumed: [], valid: true })
}

/** What is divided by, with its name. */
export type Divisor = readonly [name: string, value: number]

/** One number over another that has to be above zero. */
export function over(name: string, value: number, [divisor, by]: Divisor, unit: string): Sizing {
  const why = firstImpossible([divisor, by, 'above zero'])
  return why === undefined ? stated(name, value / by, unit) : cannotSize(why)
}
