import type { Hub, Pipe, WaterHubs } from './water-hubs.js'

/**
 * Pipes in which the water stands: those that lead to a dead end, as to a relief valve, a gauge or an expansion tank.
 *
 * @param counts which pipes are there at all; one that does not count carries nothing
 */
export function stillPipes({ hubs, hubAt }: WaterHubs, counts: (pipe: Pipe) => boolean): ReadonlySet<Pipe> {
  const still = new Set(hubs.flatMap((hub) => hub.pipes.filter((pipe) => !counts(pipe))))
  const live = new Map(hubs.map((hub) => [hub, hub.pipes.filter((pipe) => !still.has(pipe)).length]))
  const queue = hubs.filter((hub) => live.get(hub) === 1)
  for (const hub of queue) {
    const last = hub.pipes.find((each) => !still.has(each))
    if (last === undefined) continue
    still.add(last)
    queue.push(...[last.from, last.to].flatMap((port) => lessAlive(hubAt.get(port), live)))
  }
  return still
}

/** Takes a live pipe from a hub; the hub if that leaves it a single one. */
function lessAlive(hub: Hub | undefined, live: Map<Hub, number>): readonly Hub[] {
  if (hub === undefined) return []
  const left = (live.get(hub) ?? 0) - 1
  live.set(hub, left)
  return left === 1 ? [hub] : []
}
