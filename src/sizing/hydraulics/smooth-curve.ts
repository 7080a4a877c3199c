/** One point of a pump curve. */
export interface PumpCurvePoint {
  /** m3/s */
  readonly flow: number
  /** m of the fluid */
  readonly head: number
}

/** Points with the slope of the curve in each. */
export interface SmoothCurve {
  readonly points: readonly PumpCurvePoint[]
  /** m per m3/s */
  readonly slopes: readonly number[]
}

/**
 * Slopes by Steffen 1990: those of the parabola through three neighbors, held back so that the cubic between two points stays
 * between them. A parabola comes out exactly, and a falling curve falls everywhere.
 */
export function slopesOf(points: readonly PumpCurvePoint[]): SmoothCurve {
  const spans = points.slice(1).map((point, index) => spanOf(points[index] ?? point, point))
  const slopes = points.map((_, index) => slopeAt(spans, index))
  return { points, slopes }
}

/** Head at a flow; beyond the first and the last point the curve goes straight on. */
export function valueAt({ points, slopes }: SmoothCurve, flow: number): number {
  const next = points.findIndex((point) => point.flow >= flow)
  const index = next === -1 ? points.length - 1 : Math.max(0, next - 1)
  const [from, slope] = [points[index], slopes[index]]
  if (from === undefined || slope === undefined) return 0
  const [to, slopeTo] = [points[index + 1], slopes[index + 1]]
  if (to === undefined || slopeTo === undefined || flow < from.flow) return from.head + slope * (flow - from.flow)
  const { width, rise } = spanOf(from, to)
  const t = (flow - from.flow) / width
  const bend = slope + slopeTo - 2 * rise
  return from.head + width * t * (slope + t * (3 * rise - 2 * slope - slopeTo + t * bend))
}

interface Span {
  readonly width: number
  /** Slope of the straight line. */
  readonly rise: number
}

function spanOf(from: PumpCurvePoint, to: PumpCurvePoint): Span {
  const width = to.flow - from.flow
  return { width, rise: (to.head - from.head) / width }
}

function slopeAt(spans: readonly Span[], index: number): number {
  const [before, after] = [spans[index - 1], spans[index]]
  if (before === undefined) return endSlope(after, spans[index + 1])
  if (after === undefined) return endSlope(before, spans[index - 2])
  const parabola = (before.rise * after.width + after.rise * before.width) / (before.width + after.width)
  return held(parabola, before.rise, after.rise)
}

/** Slope at the first or the last point: of the parabola through it and its two neighbors. */
function endSlope(own: Span | undefined, next: Span | undefined): number {
  if (own === undefined) return 0
  if (next === undefined) return own.rise
  const share = own.width / (own.width + next.width)
  const parabola = own.rise * (1 + share) - next.rise * share
  return held(parabola, own.rise, own.rise)
}

/** Falling, and at most twice as steep as the flatter of two straight lines. */
function held(slope: number, one: number, other: number): number {
  return Math.min(0, Math.max(slope, 2 * Math.max(one, other)))
}
