import type { Problem } from '../../src/model/index.js'
import type { PlainData } from '../../src/node/plain-data.js'
import { readText } from '../../src/node/read-text.js'

/** The value of a text that must be readable. */
export function valueOf(text: string): PlainData {
  const read = readText(text, 'test.yaml')
  if (!read.ok) throw new Error(JSON.stringify(read.problems, null, 2))
  return read.value
}

/** The problems of a text; none where it is readable. */
export function problemsIn(text: string): readonly Problem[] {
  const read = readText(text, 'test.yaml')
  return read.ok ? [] : read.problems
}

/** Problems as a table: `line:column code message`. */
export function table(problems: readonly Problem[]): readonly string[] {
  return problems.map(({ line, column, code, message }) => `${line}:${column} ${code} ${message}`)
}
