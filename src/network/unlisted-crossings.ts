import { groupsMeeting, mediumGroup, type Installation, type KindSpec } from '../model/index.js'

/** A kind that joins two groups of media and of which there may be more than are listed. */
export interface Crossing {
  readonly kind: string
  readonly groups: readonly [string, string]
}

/** Where an unlisted component may lead from one group of media into another. */
export function unlistedCrossings(installation: Installation): readonly Crossing[] {
  if (isListedWhole('all', installation.total, installation)) return []
  return [...installation.model.kinds.values()].flatMap((kind) => {
    const crossings = crossingsOf(kind)
    return crossings.length > 0 && mayBeMore(kind, installation) ? crossings : []
  })
}

/** A fitting that suits either water may join both, right or wrong. */
function crossingsOf(kind: KindSpec): readonly Crossing[] {
  if (kind.section !== 'components') return []
  return kind.ways.flatMap(({ between: [one, other] }) =>
    groupsOf(kind, one).flatMap((from) =>
      groupsOf(kind, other).flatMap((to) => (from === to ? [] : [{ kind: kind.name, groups: [from, to] as const }])),
    ),
  )
}

function groupsOf(kind: KindSpec, port: string): readonly string[] {
  const medium = kind.ports[port]
  return medium === undefined ? [] : groupsMeeting(mediumGroup(medium))
}

/** Whether no stated count says that all of a kind are listed. */
function mayBeMore(kind: KindSpec, installation: Installation): boolean {
  const { ofKind, model } = installation
  const listedAs = (name: string): number =>
    (model.kindsIn.get(name) ?? []).reduce((sum, each) => sum + (ofKind.get(each)?.length ?? 0), 0)
  const names = [kind.name, ...kind.families.map((family) => family.name)]
  return !names.some((name) => isListedWhole(name, listedAs(name), installation))
}

function isListedWhole(name: string, listed: number, { counts }: Installation): boolean {
  const value = counts.get(name)?.value
  return value?.type === 'quantity' && listed >= value.high
}
