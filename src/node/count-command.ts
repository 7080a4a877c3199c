import { writeFileSync } from 'node:fs'
import type { Command } from 'commander'
import { countListed, type Installation, type Listed } from '../model/index.js'
import { CouldNotRun } from './could-not-run.js'
import { exitCodes, type ExitCode } from './exit-codes.js'
import { loadDocument, prepareDocument } from './load-document.js'
import { loadRulebook } from './load-rulebook.js'
import { addDocumentOptions, toOpen, type DocumentWords } from './shared-options.js'
import type { CommandLineIo } from './terminal.js'
import { writeCounts } from './write-counts.js'

interface CountWords extends DocumentWords {
  readonly confirm?: boolean
}

/** `count <file>`: what is listed by kind, and with `--confirm` the counts written into the document. */
export function addCountCommand(program: Command, io: CommandLineIo, finish: (code: ExitCode) => void): void {
  addDocumentOptions(
    program
      .command('count')
      .argument('<file>', 'the installation, YAML')
      .description('show what is listed by kind; confirmed, say in the document that this is all'),
  )
    .option('--confirm', 'you looked: there is nothing else. Writes "complete" and leaves every other byte as it is')
    .addHelpText('after', examples)
    .action(async (file: string, words: CountWords) => {
      finish(await count(file, words, io))
    })
}

const examples = `
Examples:
  $ hydronic-rulebook count house.yaml
  $ hydronic-rulebook count house.yaml --confirm`

async function count(file: string, words: CountWords, io: CommandLineIo): Promise<ExitCode> {
  const document = loadDocument(file)
  const { rulebook, equipment } = await loadRulebook(toOpen(words, document))
  const { installation } = prepareDocument(document, rulebook, { equipment }).facts
  const listed = countListed(installation)
  io.out(tell(listed, installation))
  if (words.confirm !== true) return exitCodes.clear
  const text = writeCounts(document.text, listed)
  if (text === undefined) throw new CouldNotRun([noPlace(file)])
  if (text !== document.text) writeFileSync(file, text)
  io.out(text === document.text ? 'The counts stood there already.\n' : `Written into ${file}.\n`)
  return exitCodes.clear
}

function tell(listed: Listed, { model, counts }: Installation): string {
  const rows = [...listed.kinds].map(([kind, number]) => {
    const stated = counts.get(kind)?.text
    return `${String(number).padStart(5)}  ${model.kinds.get(kind)?.spoken ?? kind}${stated === undefined ? '' : `  (${stated} stated)`}`
  })
  const all = counts.get('all')?.text
  const end = `${String(listed.all).padStart(5)}  in all, without parts, states and evidence${all === undefined ? '' : `  (${all} stated)`}`
  const ask = ['Is that everything? With --confirm the document says so,', 'and nobody asks for more.']
  return `${[...rows, end, '', ...ask].join('\n')}\n`
}

function noPlace(file: string): CouldNotRun['problems'][number] {
  return {
    code: 'no-place',
    pointer: '/complete',
    message: 'The counts could not be put in: the document has no section to put them before, or "complete" is no map.',
    file,
  }
}
