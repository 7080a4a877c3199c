import { UnitError } from './unit-error.js'

const roundOff = 1e-9

/**
 * Compares two amounts of one quantity. They are equal when they differ by no more than one part in a billion of the
 * larger one, which is what conversion and arithmetic may leave; measuring uncertainty is not forgiven. Infinities are
 * compared exactly.
 *
 * @returns -1 when `a` is less, 0 when equal, 1 when more
 * @throws UnitError with code `not-a-number`, because an unknown amount must never pass as equal
 * @example
 * ```ts
 * compareNumbers(0.1 + 0.2, 0.3) // 0
 * ```
 */
export function compareNumbers(a: number, b: number): -1 | 0 | 1 {
  if (Number.isNaN(a) || Number.isNaN(b)) throw new UnitError('not-a-number', 'what is not a number cannot be compared')
  if (a === b || isRoundOff(a, b)) return 0
  return a < b ? -1 : 1
}

/**
 * Whether `a` is `b` or more, within round-off.
 *
 * @throws UnitError with code `not-a-number`
 * @example
 * ```ts
 * isAtLeast(si('length', '12 in'), si('length', '1 ft')) // true
 * ```
 */
export function isAtLeast(a: number, b: number): boolean {
  return compareNumbers(a, b) >= 0
}

/**
 * Whether `a` is `b` or less, within round-off.
 *
 * @throws UnitError with code `not-a-number`
 * @example
 * ```ts
 * isAtMost(si('pressure', '31 psi'), si('pressure', '30 psi')) // false
 * ```
 */
export function isAtMost(a: number, b: number): boolean {
  return compareNumbers(a, b) <= 0
}

/**
 * Whether `a` is more than `b` by more than round-off.
 *
 * @throws UnitError with code `not-a-number`
 * @example
 * ```ts
 * isMore(si('length', '12 in'), si('length', '1 ft')) // false
 * ```
 */
export function isMore(a: number, b: number): boolean {
  return compareNumbers(a, b) > 0
}

/**
 * Whether `a` is less than `b` by more than round-off.
 *
 * @throws UnitError with code `not-a-number`
 * @example
 * ```ts
 * isLess(si('temperature', '119 F'), si('temperature', '120 F')) // true
 * ```
 */
export function isLess(a: number, b: number): boolean {
  return compareNumbers(a, b) < 0
}

function isRoundOff(a: number, b: number): boolean {
  if (!Number.isFinite(a) || !Number.isFinite(b)) return false
  return Math.abs(a - b) <= roundOff * Math.max(Math.abs(a), Math.abs(b))
}
