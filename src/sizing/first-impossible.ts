/** A number that is asked for, and what it may be. */
export type Expected = readonly [name: string, value: number, allowed: Allowed]

/** `a share` lies between 0 and 1, both included; `any` is any number at all. */
export type Allowed = 'any' | 'above zero' | 'zero or more' | 'a share'

/**
 * Tells the first number that cannot be.
 *
 * @returns a sentence, or undefined where all can be
 *
 * @example
 * firstImpossible(['length of the pipe', -3, 'zero or more']) // 'The length of the pipe cannot be -3: it is zero or more.'
 */
export function firstImpossible(...expected: readonly Expected[]): string | undefined {
  const wrong = expected.find(([, value, allowed]) => !isAllowed(value, allowed))
  if (wrong === undefined) return undefined
  const [name, value, allowed] = wrong
  return `The ${name} cannot be ${value}: it is ${allowed === 'any' ? 'a finite number' : allowed}.`
}

function isAllowed(value: number, allowed: Allowed): boolean {
  if (!Number.isFinite(value)) return false
  switch (allowed) {
    case 'any':
      return true
    case 'above zero':
      return value > 0
    case 'zero or more':
      return value >= 0
    case 'a share':
      return value >= 0 && value <= 1
    default:
      return allowed satisfies never
  }
}
