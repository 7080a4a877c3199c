import type { ICruiseOptions, IViolation } from 'dependency-cruiser'
import { cruise } from 'dependency-cruiser'
import extractDepcruiseOptions from 'dependency-cruiser/config-utl/extract-depcruise-options'
import { resolve } from 'node:path'

export interface Fence {
  readonly name: string
  readonly comment: string
}

/** The fences of `.dependency-cruiser.cjs`, in its order. */
export async function readFences(): Promise<readonly Fence[]> {
  const { ruleSet } = await readOptions()
  return (ruleSet?.forbidden ?? []).map(({ name, comment }) => {
    if (name === undefined || comment === undefined) throw new Error('Every fence has a name and a reason.')
    return { name, comment }
  })
}

/** What the fences say about the `src` folder below `baseDirectory`. */
export async function findViolations(baseDirectory: string): Promise<readonly IViolation[]> {
  const { output } = await cruise(['src'], { ...(await readOptions()), baseDir: resolve(baseDirectory) })
  if (typeof output === 'string') throw new Error('The cruise was asked for data and gave text.')
  return output.summary.violations
}

/** One row of the fence table in DEVELOPERS.md. */
export function fenceRow({ name, comment }: Fence): string {
  return `| \`${name}\` | ${comment} |`
}

function readOptions(): Promise<ICruiseOptions> {
  return extractDepcruiseOptions(resolve('.dependency-cruiser.cjs'))
}
