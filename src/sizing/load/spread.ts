/** A number that is known only to lie between two others. */
export interface Spread {
  readonly low: number
  readonly likely: number
  readonly high: number
}
