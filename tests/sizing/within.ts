import { expect } from 'vitest'

/** Holds a value to a share of what is expected. */
export function within(share: number, value: number, expected: number): void {
  expect(Math.abs(value / expected - 1), `${value} for ${expected}`).toBeLessThan(share)
}
