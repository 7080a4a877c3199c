import { InvalidArgumentError, Option, type Command } from 'commander'
import { nearestName, parseQuantity } from '../units/index.js'
import { phases, type Phase } from '../model/index.js'
import type { LoadedText } from './load-text.js'
import type { RulebookOptions } from './load-rulebook.js'
import type { CommandLineIo } from './terminal.js'

/** Options of every command that opens a rulebook. */
export interface OpeningWords {
  readonly overlay?: readonly string[]
  readonly equipment?: readonly string[]
  readonly plugin?: readonly string[]
}

/** Options of every command that reads a document. */
export interface DocumentWords extends OpeningWords {
  readonly phase?: Phase
  readonly judgedOn?: string
}

export function addOpeningOptions(command: Command): Command {
  return command
    .option('--overlay <path...>', 'overlay files, or folders to look for named authorities in')
    .option('--plugin <module...>', 'ES modules that export a plugin, or installed packages')
}

export function addDocumentOptions(command: Command): Command {
  return addOpeningOptions(command)
    .option('--equipment <path...>', 'equipment files, or folders to look for named models in')
    .addOption(new Option('--phase <phase>', `judge as of a phase: ${phases.join(', ')}`).argParser(oneOfThese(phases)))
    .addOption(
      new Option('--judged-on <date>', 'the day to judge by, as YYYY-MM-DD; today when left out').argParser(readDay),
    )
}

/** Takes one of a closed list of words; a wrong one is told with the nearest right one. */
export function oneOfThese<W extends string>(words: readonly W[]): (word: string) => W {
  return (word) => {
    const found = words.find((known) => known === word)
    if (found !== undefined) return found
    const nearest = nearestName(word, words)
    throw new InvalidArgumentError(
      `It is one of ${words.join(', ')}.${nearest === undefined ? '' : ` Did you mean "${nearest}"?`}`,
    )
  }
}

function readDay(text: string): string {
  const day = parseQuantity(text, 'date')
  if (day.ok && day.low === day.high) return text
  throw new InvalidArgumentError(day.ok ? 'It is one day: YYYY-MM-DD.' : `${day.message}.`)
}

/** What to open, from the options given. */
export function toOpen({ overlay, equipment, plugin }: OpeningWords, document?: LoadedText): RulebookOptions {
  return {
    ...(document === undefined ? {} : { document }),
    ...(overlay === undefined ? {} : { overlays: overlay }),
    ...(equipment === undefined ? {} : { equipment }),
    ...(plugin === undefined ? {} : { plugins: plugin }),
  }
}

/** Today, unless another day is given. */
export function dayOf({ judgedOn }: DocumentWords, { today }: CommandLineIo): string {
  return judgedOn ?? today
}
