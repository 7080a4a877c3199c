const batches = 11
const batchTime = 20_000

export type Work = () => unknown

/**
 * Median time of one call of each work, in microseconds. Batches take turns, so that a machine that slows down slows all;
 * time of the processor is counted, so that other programs do not count.
 */
export async function timesOf<N extends string>(
  works: Readonly<Record<N, Work>>,
): Promise<Readonly<Record<N, number>>> {
  const names = Object.keys(works) as N[]
  const calls = new Map<N, number>()
  for (const name of names) calls.set(name, await callsFor(works[name]))
  const told = new Map<N, number[]>(names.map((name) => [name, []]))
  for (let batch = 0; batch < batches; batch += 1) {
    for (const name of names) told.get(name)?.push(await perCall(calls.get(name) ?? 1, works[name]))
  }
  return Object.fromEntries(names.map((name) => [name, median(told.get(name) ?? [])])) as Record<N, number>
}

export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((one, other) => one - other)
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}

/** Bytes that stay on the heap for each of so many copies, as long as they are held. */
export function heldBy(copies: number, make: Work): number {
  const warm = make()
  const before = settledHeap()
  const made = Array.from({ length: copies }, make)
  const held = settledHeap() - before
  return made.includes(warm) ? Number.NaN : held / copies
}

/** Calls that fill one batch; finding out warms the work up. */
async function callsFor(work: Work): Promise<number> {
  const few = Math.ceil(batchTime / (await perCall(1, work)))
  return Math.max(1, Math.ceil(batchTime / (await perCall(Math.max(1, few), work))))
}

/** Microseconds of processor time for one call, without the garbage of others. What is a promise is awaited. */
async function perCall(calls: number, work: Work): Promise<number> {
  collectGarbage('minor')
  const start = process.cpuUsage()
  for (let call = 0; call < calls; call += 1) {
    const made = work()
    if (made instanceof Promise) await made
  }
  const { user, system } = process.cpuUsage(start)
  return Math.max(1, user + system) / calls
}

function settledHeap(): number {
  for (let times = 0; times < 3; times += 1) collectGarbage('major')
  return process.memoryUsage().heapUsed
}

/** The minor one leaves compiled code alone, so that what was warm stays warm. */
function collectGarbage(type: 'major' | 'minor'): void {
  if (globalThis.gc === undefined) throw new Error('Run with --expose-gc.')
  globalThis.gc({ type })
}
