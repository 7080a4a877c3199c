/** What a topic has told already: steps by pairs that follow each other, and what was granted. */
export interface Told {
  readonly pairs: Set<string>
  readonly granted: Set<string>
}

/** A topic that has told nothing yet. */
export function nothingTold(): Told {
  return { pairs: new Set(), granted: new Set() }
}

/**
 * Steps of a working, where a run that the topic has told already is only its result: a sum of forty pipes is worth reading
 * once. What is new is noted as told.
 */
export function foldedSteps(steps: readonly string[], { pairs }: Told): readonly string[] {
  const following = steps.map((step, index) => pairOf(step, steps[index + 1]))
  const folded = runsOf(steps, (index) => pairs.has(following[index] ?? '')).flatMap((run) =>
    run.length < shortestRun ? run : [run.length === steps.length ? 'as above' : `${run.at(-1) ?? ''} (above)`],
  )
  for (const pair of following) pairs.add(pair)
  return folded
}

/** What is granted for the first time in the topic. */
export function firstGranted(grants: readonly string[], { granted }: Told): readonly string[] {
  const fresh = [...new Set(grants)].filter((grant) => !granted.has(grant))
  for (const grant of fresh) granted.add(grant)
  return fresh
}

/** Two steps are as short as a word that they stand above. */
const shortestRun = 3

const pairOf = (step: string, next: string | undefined): string => (next === undefined ? '' : `${step}\n${next}`)

/** Steps in runs: a step stays with the one before where the two were told together. */
function runsOf(steps: readonly string[], told: (index: number) => boolean): readonly (readonly string[])[] {
  const runs: string[][] = []
  for (const [index, step] of steps.entries()) {
    const last = runs.at(-1)
    if (last !== undefined && told(index - 1)) last.push(step)
    else runs.push([step])
  }
  return runs
}
