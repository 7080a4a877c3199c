import type { KindSpec, Medium } from './kind.js'

/** The ports of a kind. `branch*` stands for any `branch` with a number behind it. */
export interface Ports {
  readonly has: (port: string) => boolean
  readonly mediumOf: (port: string) => Medium | undefined
}

export function portsOf(kind: KindSpec): Ports {
  const mediumOf = (port: string): Medium | undefined => {
    if (Object.hasOwn(kind.ports, port) && !port.endsWith('*')) return kind.ports[port]
    const numbered = /^([a-zA-Z]+)[1-9]\d{0,2}$/.exec(port)
    return numbered === null ? undefined : kind.ports[`${numbered[1] ?? ''}*`]
  }
  return { has: (port) => mediumOf(port) !== undefined, mediumOf }
}

const groups: Readonly<Record<Medium, string>> = {
  heatingWater: 'heatingWater',
  eitherWater: 'eitherWater',
  potableCold: 'potable',
  potableHot: 'potable',
  discharge: 'discharge',
  condensate: 'condensate',
  gas: 'gas',
  flueGas: 'flueGas',
  combustionAir: 'combustionAir',
}

/** Media that may meet in one pipe: cold and hot drinking water are one group. */
export function mediumGroup(medium: Medium): string {
  return groups[medium]
}

/** Whether a line of one medium may join a port of another. */
export function mediaMeet(line: Medium, port: Medium): boolean {
  const water = line === 'heatingWater' || mediumGroup(line) === 'potable'
  return port === 'eitherWater' ? water : mediumGroup(line) === mediumGroup(port)
}

/** The groups that a port of a group can belong to: one that suits either water may stand in both. */
export function groupsMeeting(group: string): readonly string[] {
  return group === 'eitherWater' ? [mediumGroup('heatingWater'), mediumGroup('potableCold')] : [group]
}

/** What a line can carry. */
export const media = Object.keys(groups).filter(
  (name): name is Medium => Object.hasOwn(groups, name) && name !== 'eitherWater',
)
