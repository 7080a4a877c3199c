import { backflowDevice, portsOf, type Thing } from '../model/index.js'
import { isInFamily } from './of-kind.js'

/** Whether a port always carries drinking water. One that suits either water tells nothing; the pipe beyond it does. */
export function isDrinkingWater({ kind }: Thing, port: string): boolean {
  return portsOf(kind).mediumOf(port)?.startsWith('potable') === true
}

export function isBackflowDevice(thing: Thing): boolean {
  return isInFamily(thing, backflowDevice)
}
