import { Option, type Command } from 'commander'
import type { Report } from '../findings/index.js'
import { printProblem } from '../model/index.js'
import { hostSection, printJson, printMarkdown, printText, type HostOutcome } from '../printing/index.js'
import { askHostRules } from './ask-host-rules.js'
import { exitCodeFor, exitRules, type ExitCode, type ExitRule } from './exit-codes.js'
import { inPhase, loadDocument, reportOn } from './load-document.js'
import { loadRulebook, type LoadedRulebook } from './load-rulebook.js'
import { addDocumentOptions, dayOf, oneOfThese, toOpen, type DocumentWords } from './shared-options.js'
import { pageFor, type CommandLineIo } from './terminal.js'

const formats = ['text', 'markdown', 'json'] as const

interface CheckWords extends DocumentWords {
  readonly format: (typeof formats)[number]
  readonly exitOn: ExitRule
  readonly passed?: boolean
  readonly hostRules?: string
}

/** `check <file>`: judges an installation and prints the report. */
export function addCheckCommand(program: Command, io: CommandLineIo, finish: (code: ExitCode) => void): void {
  addDocumentOptions(
    program
      .command('check')
      .argument('<file>', 'the installation, YAML or JSON')
      .description('judge an installation and print what to mend and what to find out'),
  )
    .addOption(
      new Option('--format <format>', `how to print: ${formats.join(', ')}`)
        .default(formats[0])
        .argParser(oneOfThese(formats)),
    )
    .addOption(
      new Option('--exit-on <outcome>', 'what the exit code tells: "open" 1 and 3, "failing" 1 only, "never" neither')
        .default('open')
        .argParser(oneOfThese(exitRules)),
    )
    .option('--passed', 'list what holds and what does not apply as well')
    .option('--host-rules <file>', 'rules of your own for json-rules-engine, in JSON; they never change the outcome')
    .addHelpText('after', examples)
    .action(async (file: string, words: CheckWords) => {
      finish(await check(file, words, io))
    })
}

const examples = `
Exit codes: 0 clear, 1 failing, 2 could not run, 3 open (something that must be
known cannot be told).

Examples:
  $ hydronic-rulebook check house.yaml
  $ hydronic-rulebook check house.yaml --phase final --overlay overlays/
  $ hydronic-rulebook check house.yaml --exit-on failing --format json`

async function check(file: string, words: CheckWords, io: CommandLineIo): Promise<ExitCode> {
  const document = loadDocument(file)
  const loaded = await loadRulebook(toOpen(words, document))
  const { rulebook, equipment } = loaded
  const report = reportOn(document, rulebook, {
    equipment,
    judgedOn: dayOf(words, io),
    listPassed: words.passed === true,
    ...(words.phase === undefined ? {} : { phase: words.phase }),
  })
  const host =
    words.hostRules === undefined
      ? undefined
      : await askHostRules(words.hostRules, inPhase(document.value, words.phase), loaded)
  io.out(print({ report, host, opened: loaded.opened }, words, io))
  tellNotes(loaded, words.format === 'json', io)
  return exitCodeFor(report.outcome, words.exitOn)
}

interface Result {
  readonly report: Report
  readonly host: HostOutcome | undefined
  readonly opened: readonly string[]
}

function print({ report, host, opened }: Result, { format }: CheckWords, io: CommandLineIo): string {
  const layout = { opened, more: host === undefined ? [] : [hostSection(host)] }
  switch (format) {
    case 'text':
      return printText(report, { ...layout, ...pageFor(io) })
    case 'markdown':
      return printMarkdown(report, layout)
    case 'json':
      return host === undefined ? printJson(report) : printJson({ ...report, ...host })
    default:
      return neverFormat(format)
  }
}

/** What was not found or looks odd, and where the page does not say it, what was opened. */
export function tellNotes({ rulebook, opened, notes }: LoadedRulebook, withOpened: boolean, io: CommandLineIo): void {
  const lines = [
    ...(withOpened ? opened.map((line) => `opened ${line}`) : []),
    ...notes,
    ...rulebook.warnings.map((warning) => `warning: ${printProblem(warning)}`),
  ]
  if (lines.length > 0) io.err(`${lines.join('\n')}\n`)
}

function neverFormat(format: never): never {
  throw new TypeError(`no such format: ${String(format)}`)
}
