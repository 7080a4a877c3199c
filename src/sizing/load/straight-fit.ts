/** A straight line through points, by least squares. */
export interface StraightFit {
  readonly slope: number
  readonly intercept: number
  /** r2: 1 where every point lies on the line. */
  readonly fit: number
  /** Of a point about the line; 0 with two points. */
  readonly residual: number
  readonly count: number
  readonly meanX: number
  /** Sum of the squares of x about its mean. */
  readonly squares: number
}

/**
 * Fits a straight line; nothing with fewer than two different places.
 *
 * @example
 * straightFit([[0, 1], [1, 3]])?.slope // 2
 */
export function straightFit(points: readonly (readonly [x: number, y: number])[]): StraightFit | undefined {
  const count = points.length
  const [meanX, meanY] = [mean(points.map(([x]) => x)), mean(points.map(([, y]) => y))]
  const squares = sum(points.map(([x]) => (x - meanX) ** 2))
  if (count < 2 || squares <= 1e-12 * Math.max(1, meanX ** 2)) return undefined
  const slope = sum(points.map(([x, y]) => (x - meanX) * (y - meanY))) / squares
  const intercept = meanY - slope * meanX
  const left = sum(points.map(([x, y]) => (y - intercept - slope * x) ** 2))
  const total = sum(points.map(([, y]) => (y - meanY) ** 2))
  return {
    slope,
    intercept,
    fit: total === 0 ? 1 : Math.max(0, 1 - left / total),
    residual: count > 2 ? Math.sqrt(left / (count - 2)) : 0,
    count,
    meanX,
    squares,
  }
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}

function mean(values: readonly number[]): number {
  return sum(values) / values.length
}
