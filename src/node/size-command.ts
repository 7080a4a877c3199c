import { Option, type Command } from 'commander'
import { sizeTopics, type SizeTopic } from '../checks/index.js'
import { sizesSheet } from '../printing/index.js'
import { sizesFrom } from '../size-installation.js'
import { tellNotes } from './check-command.js'
import { exitCodes, type ExitCode } from './exit-codes.js'
import { loadDocument, prepareDocument } from './load-document.js'
import { loadRulebook } from './load-rulebook.js'
import { printSheet, sheetFormats, type SheetFormat } from './print-sheet.js'
import { addDocumentOptions, oneOfThese, toOpen, type DocumentWords } from './shared-options.js'
import type { CommandLineIo } from './terminal.js'

interface SizeWords extends DocumentWords {
  readonly format: SheetFormat
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
      new Option('--format <format>', `how to print: ${sheetFormats.join(', ')}`)
        .default(sheetFormats[0])
        .argParser(oneOfThese(sheetFormats)),
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
  return text.split(',').map((word) => readTopic(word.trim()))
}

const readTopic = oneOfThese(sizeTopics)

async function size(file: string, words: SizeWords, io: CommandLineIo): Promise<ExitCode> {
  const document = loadDocument(file)
  const loaded = await loadRulebook(toOpen(words, document))
  const { facts } = prepareDocument(document, loaded.rulebook, { equipment: loaded.equipment })
  const sizes = sizesFrom(facts, words)
  io.out(printSheet({ sheet: sizesSheet(sizes), data: sizes }, words.format, io))
  tellNotes(loaded, words.format === 'text', io)
  return exitCodes.clear
}
