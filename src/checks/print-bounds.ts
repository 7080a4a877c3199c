interface Bounds {
  readonly low: number
  readonly high: number
}

/** An amount that cannot be negative, as a term of a witness: `30 psi`, `30 psi to 60 psi`, `unknown`. */
export function printBounds({ low, high }: Bounds, print: (value: number) => string): string {
  if (low === high) return print(low)
  if (low === 0 && high === Infinity) return 'unknown'
  return `${print(low)} to ${print(high)}`
}
