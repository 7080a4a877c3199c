import { InvalidArgumentError, Option, type Command } from 'commander'
import { sizeTopics, type SizeTopic, type Sizes } from '../checks/index.js'
import { sheetMarkdown, sheetText, sizesSheet } from '../printing/index.js'
import { sizesFrom } from '../size-installation.js'
import { nearestName } from '../units/index.js'
import { tellNotes } from './check-command.js'
import { exitCodes, type ExitCode } from './exit-codes.js'
import { loadDocument, prepareDocument } from './load-document.js'
import { loadRulebook } from './load-rulebook.js'
import { addDocumentOptions, oneOfThese, toOpen, type DocumentWords } from './shared-options.js'
import { pageFor, type CommandLineIo } from './terminal.js'

const formats = ['text', 'markdown', 'json'] as const

interface SizeWords extends DocumentWords {
  readonly format: (typeof formats)[number]
  readonly only?: readonly SizeTopic[]
}

/** `size <file>`: every number that the document has the inputs for, with its working. */
export function addSizeCommand(program: Command, io: CommandLineIo, finish: (code: ExitCode) => void): void {
  addDocumentOptions(
    program
      .command('size')
      .argument('<file>', 'the installation, YAML or JSON')
      .description('work out the sizes of an installation, with working'),
  )
    .addOption(new Option('--only <topics>', `topics, with commas: ${sizeTopics.join(', ')}`).argParser(readTopics))
    .addOption(
      new Option('--format <format>', `how to print: ${formats.join(', ')}`)
        .default(formats[0])
        .argParser(oneOfThese(formats)),
    )
    .addHelpText('after', examples)
    .action(async (file: string, words: SizeWords) => {
      finish(await size(file, words, io))
    })
}

const examples = `
Examples:
  $ hydronic-rulebook size house.yaml
  $ hydronic-rulebook size house.yaml --only expansion,gas
  $ hydronic-rulebook size house.yaml --format json`

function readTopics(text: string): readonly SizeTopic[] {
  return text.split(',').map((word) => {
    const found = sizeTopics.find((topic) => topic === word.trim())
    if (found !== undefined) return found
    const nearest = nearestName(word.trim(), sizeTopics)
    const hint = nearest === undefined ? '' : ` Did you mean "${nearest}"?`
    throw new InvalidArgumentError(`Topics are ${sizeTopics.join(', ')}.${hint}`)
  })
}

async function size(file: string, words: SizeWords, io: CommandLineIo): Promise<ExitCode> {
  const document = loadDocument(file)
  const loaded = await loadRulebook(toOpen(words, document))
  const { facts } = prepareDocument(document, loaded.rulebook, { equipment: loaded.equipment })
  io.out(print(sizesFrom(facts, words), words, io))
  tellNotes(loaded, words.format === 'text', io)
  return exitCodes.clear
}

function print(sizes: Sizes, { format }: SizeWords, io: CommandLineIo): string {
  switch (format) {
    case 'text':
      return sheetText(sizesSheet(sizes), pageFor(io))
    case 'markdown':
      return sheetMarkdown(sizesSheet(sizes))
    case 'json':
      return `${JSON.stringify(sizes, null, 2)}\n`
    default:
      return neverFormat(format)
  }
}

function neverFormat(format: never): never {
  throw new TypeError(`no such format: ${String(format)}`)
}
