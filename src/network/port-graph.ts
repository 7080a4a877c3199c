import type { Thing } from '../model/index.js'
import type { Passage } from './passage.js'

/** A port of a component, or what lies beyond all that is drawn in one group of media. */
export interface PortNode {
  /** `B1.supply`; the unlisted rest of heating water is `?heatingWater`. */
  readonly name: string
  /** Absent for the unlisted rest. */
  readonly component?: Thing
  readonly port: string
  /** Media that may meet in one pipe share a group. */
  readonly group: string
}

/** A passage as seen from one of its ports. */
export interface Link {
  readonly passage: Passage
  /** Name of the port it leads to. */
  readonly to: string
}

/** The installation as ports and the passages between them. */
export interface PortGraph {
  readonly node: (name: string) => PortNode | undefined
  readonly portsOf: (component: string) => readonly PortNode[]
  readonly linksAt: (node: string) => readonly Link[]
}
