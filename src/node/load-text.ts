import { readdirSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import type { Problem } from '../model/index.js'
import { nearestName } from '../units/index.js'
import { CouldNotRun } from './could-not-run.js'
import { attempt, readTextFile } from './files.js'
import type { Located } from './locate.js'
import type { PlainData } from './plain-data.js'
import { readText } from './read-text.js'

/** A YAML or JSON file, with where everything in it stands. */
export interface LoadedText {
  /** As it was given. */
  readonly file: string
  readonly text: string
  readonly value: PlainData
  readonly source: Located
}

/** @throws CouldNotRun */
export function loadText(file: string): LoadedText {
  const found = readTextFile(file)
  if (!found.ok) throw new CouldNotRun(found.problems.map((problem) => withNeighbor(problem, file)))
  return parseText(found.text, file)
}

/** @throws CouldNotRun */
export function parseText(text: string, file: string): LoadedText {
  const read = readText(text, file)
  if (!read.ok) throw new CouldNotRun(read.problems)
  return { file, text, value: read.value, source: read }
}

/** A misspelled file is told beside the file that is there. */
function withNeighbor(problem: Problem, file: string): Problem {
  if (problem.code !== 'no-such-file') return problem
  const nearest = nearestName(basename(file), attempt(() => readdirSync(dirname(file))) ?? [])
  return nearest === undefined ? problem : { ...problem, nearest: join(dirname(file), nearest) }
}
