import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'

const batches = 9
const batchTime = 25

/** Median time of one call in microseconds, after warming up. */
export function timeOf(work: () => unknown): number {
  const calls = callsFor(elapsed(1, work), (count) => elapsed(count, work))
  return median(Array.from({ length: batches }, () => (1000 * elapsed(calls, work)) / calls))
}

/** The same for work that is awaited. */
export async function timeOfAwaited(work: () => Promise<unknown>): Promise<number> {
  await elapsedAwaited(1, work)
  const once = await elapsedAwaited(1, work)
  const calls = Math.max(1, Math.ceil(batchTime / once))
  const times: number[] = []
  for (let batch = 0; batch < batches; batch += 1) times.push((1000 * (await elapsedAwaited(calls, work))) / calls)
  return median(times)
}

export function median(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((one, other) => one - other)
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}

/** Bytes that stay on the heap as long as what is made is held. */
export function heldBy(make: () => unknown): number {
  const collect = garbageCollector()
  collect()
  const before = process.memoryUsage().heapUsed
  const made = make()
  collect()
  const held = process.memoryUsage().heapUsed - before
  return made === undefined ? Number.NaN : held
}

/** Calls that fill one batch; measuring them warms the work up. */
function callsFor(once: number, run: (count: number) => number): number {
  const few = Math.max(1, Math.ceil(batchTime / Math.max(once, 0.01)))
  return Math.max(1, Math.ceil((few * batchTime) / Math.max(run(few), 0.01)))
}

function elapsed(calls: number, work: () => unknown): number {
  const start = performance.now()
  for (let call = 0; call < calls; call += 1) work()
  return performance.now() - start
}

async function elapsedAwaited(calls: number, work: () => Promise<unknown>): Promise<number> {
  const start = performance.now()
  for (let call = 0; call < calls; call += 1) await work()
  return performance.now() - start
}

function garbageCollector(): () => void {
  setFlagsFromString('--expose_gc')
  const collect: unknown = runInNewContext('gc')
  return typeof collect === 'function' ? () => void Reflect.apply(collect, undefined, []) : () => undefined
}
