/** Passages that lie on a way round: dead ends, such as a gauge or an expansion tank, carry no flow and need no data. */
export function circulating<Passage extends Between>(passages: readonly Passage[]): readonly Passage[] {
  const around = new Map<string, Set<Passage>>()
  for (const passage of passages) {
    for (const port of [passage.from, passage.to]) {
      const there = around.get(port) ?? new Set<Passage>()
      around.set(port, there.add(passage))
    }
  }
  const left = new Set(passages)
  const ends = [...around.keys()]
  for (const port of ends) {
    const [only, second] = around.get(port) ?? []
    if (only === undefined || second !== undefined) continue
    left.delete(only)
    for (const side of [only.from, only.to]) around.get(side)?.delete(only)
    ends.push(only.from === port ? only.to : only.from)
  }
  return [...left]
}

interface Between {
  readonly from: string
  readonly to: string
}
