import { fallingRoot } from '../falling-root.js'
import { type Expected, firstImpossible } from '../first-impossible.js'
import { slopesOf, valueAt, type PumpCurvePoint, type SmoothCurve } from './smooth-curve.js'

/** How a pump sets its head. */
export type PumpMode =
  /** The curve of its speed, and nothing else. */
  | { readonly mode: 'constant-speed' }
  /** A head that it holds as far as its curve reaches. */
  | { readonly mode: 'constant-pressure'; readonly setHead: number }
  /**
   * A head that falls in a straight line from the set one, where the curve meets it, to a part of it at no flow; one half
   * where nothing is said. Makers' slopes differ.
   */
  | { readonly mode: 'proportional-pressure'; readonly setHead: number; readonly zeroFlowShare?: number }

/** A pump by the points of its curve. */
export interface Pump {
  /** At least two; m3/s and m of the fluid, the head never rising with the flow. */
  readonly curve: readonly PumpCurvePoint[]
  readonly control: PumpMode
}

/** A pump that was found possible, made ready to be asked. */
export interface ReadyPump {
  /** Head, m, at a flow, m3/s. */
  readonly headAt: (flow: number) => number
  /** Head that the curve alone would give. */
  readonly fullSpeedAt: (flow: number) => number
  /** Flow of the last point, m3/s. */
  readonly lastFlow: number
}

/** Makes a pump ready, or says why it cannot be. */
export function readyPump({ curve, control }: Pump): ReadyPump | string {
  const why = impossiblePump(curve, control)
  if (why !== undefined) return why
  const smooth = slopesOf(curve)
  const fullSpeedAt = (flow: number): number => Math.max(0, valueAt(smooth, flow))
  return { headAt: controlled(smooth, fullSpeedAt, control), fullSpeedAt, lastFlow: lastOf(curve).flow }
}

function impossiblePump(curve: readonly PumpCurvePoint[], control: PumpMode): string | undefined {
  if (curve.length < 2) return 'A pump curve has at least two points.'
  const numbers = curve.flatMap(({ flow, head }): readonly Expected[] => [
    ['flow of a pump curve point', flow, 'zero or more'],
    ['head of a pump curve point', head, 'zero or more'],
  ])
  return firstImpossible(...numbers, ...controlExpected(control)) ?? unordered(curve)
}

function controlExpected(control: PumpMode): readonly Expected[] {
  if (control.mode === 'constant-speed') return []
  const setHead: Expected = ['set head of the pump', control.setHead, 'above zero']
  if (control.mode === 'constant-pressure') return [setHead]
  return [setHead, ['share of the set head at no flow', control.zeroFlowShare ?? half, 'a share']]
}

function unordered(curve: readonly PumpCurvePoint[]): string | undefined {
  for (const [index, point] of curve.entries()) {
    const before = curve[index - 1]
    if (before === undefined) continue
    if (point.flow <= before.flow) return `The flows of the pump curve do not rise at ${point.flow} m3/s.`
    if (point.head > before.head) return `The pump curve rises from ${before.head} m to ${point.head} m.`
  }
  if (lastOf(curve).head === curve[0]?.head) return 'The pump curve is flat: it does not say where the head ends.'
  return undefined
}

function controlled(
  smooth: SmoothCurve,
  fullSpeedAt: (flow: number) => number,
  control: PumpMode,
): (flow: number) => number {
  switch (control.mode) {
    case 'constant-speed':
      return (flow) => valueAt(smooth, flow)
    case 'constant-pressure':
      return (flow) => Math.min(control.setHead, valueAt(smooth, flow))
    case 'proportional-pressure': {
      const { setHead, zeroFlowShare = half } = control
      const meets = meetingFlow(smooth, setHead)
      const line = (flow: number): number =>
        zeroFlowShare + (1 - zeroFlowShare) * Math.min(1, Math.max(0, flow / meets))
      return (flow) => Math.min(meets === 0 ? setHead : setHead * line(flow), valueAt(smooth, flow))
    }
    default:
      return fullSpeedAt
  }
}

/** Flow at which the curve has fallen to the set head; zero where it never reaches it. */
function meetingFlow(smooth: SmoothCurve, setHead: number): number {
  if (valueAt(smooth, 0) <= setHead) return 0
  return fallingRoot((flow) => valueAt(smooth, flow) - setHead, 0, 10 * lastOf(smooth.points).flow)
}

function lastOf(curve: readonly PumpCurvePoint[]): PumpCurvePoint {
  return curve[curve.length - 1] ?? { flow: 0, head: 0 }
}

const half = 0.5
