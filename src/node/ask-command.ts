import { Option, type Command } from 'commander'
import { questionsOf, questionsSheet, sheetText } from '../printing/index.js'
import { tellNotes } from './check-command.js'
import { exitCodes, type ExitCode } from './exit-codes.js'
import { loadDocument, prepareDocument, reportOn } from './load-document.js'
import { loadRulebook } from './load-rulebook.js'
import { addDocumentOptions, dayOf, oneOfThese, toOpen, type DocumentWords } from './shared-options.js'
import { pageFor, type CommandLineIo } from './terminal.js'

const formats = ['text', 'json'] as const

interface AskWords extends DocumentWords {
  readonly format: (typeof formats)[number]
}

/** `ask <file>`: what to find out next, in the order of a walk round the house. */
export function addAskCommand(program: Command, io: CommandLineIo, finish: (code: ExitCode) => void): void {
  addDocumentOptions(
    program
      .command('ask')
      .argument('<file>', 'the installation, YAML or JSON')
      .description('list what to find out next, by place, with what each answer decides'),
  )
    .addOption(
      new Option('--format <format>', `how to print: ${formats.join(', ')}`)
        .default(formats[0])
        .argParser(oneOfThese(formats)),
    )
    .addHelpText('after', examples)
    .action(async (file: string, words: AskWords) => {
      finish(await ask(file, words, io))
    })
}

const examples = `
Examples:
  $ hydronic-rulebook ask house.yaml
  $ hydronic-rulebook ask house.yaml --phase survey
  $ hydronic-rulebook ask house.yaml --format json`

async function ask(file: string, words: AskWords, io: CommandLineIo): Promise<ExitCode> {
  const document = loadDocument(file)
  const loaded = await loadRulebook(toOpen(words, document))
  const { rulebook, equipment } = loaded
  const options = { equipment, ...(words.phase === undefined ? {} : { phase: words.phase }) }
  const report = reportOn(document, rulebook, { ...options, judgedOn: dayOf(words, io) })
  const { facts } = prepareDocument(document, rulebook, options)
  const questions = questionsOf(report, rulebook, facts.installation)
  const json = (): string =>
    `${JSON.stringify({ questions, unheard: report.unheard, judgedOn: report.provenance.judgedOn }, null, 2)}\n`
  const text = (): string => sheetText(questionsSheet(questions, report, rulebook), pageFor(io))
  io.out(words.format === 'json' ? json() : text())
  tellNotes(loaded, true, io)
  return exitCodes.clear
}
