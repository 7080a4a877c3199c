import type { Position } from './mistake.js'

/** Counts lines once; the answer turns a place in the text into line and column. */
export function linePositions(text: string): (at: number) => Position {
  const starts = lineStarts(text)
  return (at) => {
    const line = lastNotAfter(starts, at)
    return { line: line + 1, column: at - (starts[line] ?? 0) + 1 }
  }
}

function lineStarts(text: string): readonly number[] {
  const starts = [0]
  for (let end = text.indexOf('\n'); end !== -1; end = text.indexOf('\n', end + 1)) starts.push(end + 1)
  return starts
}

function lastNotAfter(starts: readonly number[], at: number): number {
  let low = 0
  let high = starts.length - 1
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if ((starts[middle] ?? 0) <= at) low = middle
    else high = middle - 1
  }
  return low
}
