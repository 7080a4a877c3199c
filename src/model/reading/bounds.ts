import type { ProblemList } from './problems.js'

/** A document is a few levels deep; what is deeper is no document. */
const deepest = 64
/** Ten thousand components are half a million values. */
const most = 5_000_000

/** Refuses what could not be read in bounded time and memory: cycles, endless nesting, values shared without end. */
export function checkBounds(document: unknown, problems: ProblemList): boolean {
  const open: (readonly [value: unknown, depth: number])[] = [[document, 0]]
  let seen = 0
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const [value, depth] = next
    seen += 1
    if (depth > deepest)
      return refuse('too-deep', `Nothing in a document is more than ${deepest} levels deep.`, problems)
    if (seen > most) return refuse('too-large', `A document of more than ${most} values is not read.`, problems)
    if (typeof value !== 'object' || value === null) continue
    for (const inner of Object.values(value)) open.push([inner, depth + 1])
  }
  return true
}

function refuse(code: string, message: string, problems: ProblemList): boolean {
  problems.add(code, [], message)
  return false
}
