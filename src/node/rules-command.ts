import { Option, type Command } from 'commander'
import { ruleLines, rulesSheet, topicOf, type RuleLine } from '../printing/index.js'
import { nearestName } from '../units/index.js'
import { CouldNotRun } from './could-not-run.js'
import { exitCodes, type ExitCode } from './exit-codes.js'
import { loadRulebook } from './load-rulebook.js'
import { printSheet, sheetFormats, type SheetFormat } from './print-sheet.js'
import { addOpeningOptions, oneOfThese, toOpen, type OpeningWords } from './shared-options.js'
import type { CommandLineIo } from './terminal.js'

interface RulesWords extends OpeningWords {
  readonly format: SheetFormat
  readonly topic?: string
}

/** `rules`: every rule with its severity, whom it asks and from which phase on. */
export function addRulesCommand(program: Command, io: CommandLineIo, finish: (code: ExitCode) => void): void {
  addOpeningOptions(program.command('rules').description('list the rules with severity, subject and phase'))
    .option('--topic <topic>', 'only rules of one topic, such as relief')
    .addOption(
      new Option('--format <format>', `how to print: ${sheetFormats.join(', ')}`)
        .default(sheetFormats[0])
        .argParser(oneOfThese(sheetFormats)),
    )
    .addHelpText('after', examples)
    .action(async (words: RulesWords) => {
      finish(await list(words, io))
    })
}

const examples = `
Examples:
  $ hydronic-rulebook rules
  $ hydronic-rulebook rules --topic relief
  $ hydronic-rulebook rules --overlay overlays/saltmarrow.yaml --format json`

async function list(words: RulesWords, io: CommandLineIo): Promise<ExitCode> {
  const { rulebook } = await loadRulebook(toOpen(words))
  const lines = ruleLines(rulebook.rules)
  const wanted = words.topic === undefined ? lines : ofTopic(words.topic, lines)
  io.out(printSheet({ sheet: rulesSheet(wanted), data: wanted }, words.format, io))
  return exitCodes.clear
}

function ofTopic(topic: string, lines: readonly RuleLine[]): readonly RuleLine[] {
  const found = lines.filter(({ id }) => topicOf(id) === topic)
  if (found.length > 0) return found
  const topics = [...new Set(lines.map((line) => line.topic))]
  const nearest = nearestName(topic, topics)
  throw new CouldNotRun([
    {
      code: 'unknown-topic',
      pointer: '',
      message: `There is no topic "${topic}"; there are ${topics.join(', ')}.`,
      file: '--topic',
      ...(nearest === undefined ? {} : { nearest }),
    },
  ])
}
