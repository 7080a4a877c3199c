import type { MovingFluid } from '../friction/flow-in-pipe.js'
import type { FrictionMethod } from '../friction/friction-method.js'
import type { RunPart } from '../friction/run-loss.js'
import type { Step } from '../sized.js'
import type { Pump } from './pump.js'

/** One stretch between two nodes, and all that its flow passes. */
export interface FlowEdge {
  /** What it is called: unique in the network. */
  readonly name: string
  readonly from: string
  readonly to: string
  /** What takes pressure in it; nothing where it is empty. */
  readonly parts: readonly RunPart[]
  /** A pump that runs in it, from `from` to `to`. */
  readonly pump?: Pump
  /** Whether it lets nothing flow back from `to` to `from`. */
  readonly checked?: boolean
  /** Whether it is shut: it is left out. */
  readonly closed?: boolean
}

/** A node whose head is given: a main, a tank, the point of no pressure change. */
export interface FixedHead {
  readonly node: string
  /** m of the fluid, with its height. */
  readonly head: number
}

/** Pipes, valves and pumps in any arrangement, in steady flow. */
export interface FlowNetwork extends MovingFluid {
  readonly edges: readonly FlowEdge[]
  /** A closed circuit without any has its first node at zero. */
  readonly fixed?: readonly FixedHead[]
  /** Colebrook where nothing is said. */
  readonly method?: FrictionMethod
}

/** What goes on in an edge. */
export interface EdgeFlow {
  readonly name: string
  readonly from: string
  readonly to: string
  /** m3/s, negative from `to` to `from`; zero where it is shut or checked. */
  readonly flow: number
  /** m of the fluid that its parts take, along the flow: never negative. */
  readonly loss: number
  /** m/s, highest in its pipes; zero without pipe. */
  readonly velocity: number
}

/** What a pump does. */
export interface PumpDuty {
  readonly name: string
  /** m3/s */
  readonly flow: number
  /** m of the fluid */
  readonly head: number
  /** m that the curve alone would give at that flow. */
  readonly fullSpeedHead: number
}

/** Flows and heads of a network, or the sentence that names what makes them impossible. */
export type NetworkSolution =
  | {
      readonly solved: true
      readonly edges: readonly EdgeFlow[]
      /** The flow along an edge, by its name. */
      readonly edge: (name: string) => EdgeFlow | undefined
      /** Node to its head, m. */
      readonly heads: ReadonlyMap<string, number>
      readonly pumps: readonly PumpDuty[]
      /** Greatest flow that a node neither gets nor gives, m3/s. */
      readonly unbalancedFlow: number
      /** Greatest head by which an edge misses its ends, m. */
      readonly unbalancedHead: number
      readonly iterations: number
      readonly working: readonly Step[]
      readonly assumed: readonly string[]
      /** False where a pump runs beyond its curve. */
      readonly valid: boolean
    }
  | { readonly solved: false; readonly why: string }
