import type { Command } from 'commander'
import { writeReport } from '../findings/index.js'
import { judge, type Verdict } from '../judging/index.js'
import { isDue } from '../model/index.js'
import {
  mendSection,
  questionsOf,
  ruleSheet,
  sheetText,
  verdictSection,
  verdictsSection,
  type Section,
} from '../printing/index.js'
import type { Rule, Rulebook } from '../rulebook/index.js'
import { nearestName } from '../units/index.js'
import { tellNotes } from './check-command.js'
import { CouldNotRun } from './could-not-run.js'
import { exitCodes, type ExitCode } from './exit-codes.js'
import { loadDocument, prepareDocument } from './load-document.js'
import { loadRulebook } from './load-rulebook.js'
import type { LoadedText } from './load-text.js'
import { addDocumentOptions, toOpen, type DocumentWords } from './shared-options.js'
import { pageFor, type CommandLineIo } from './terminal.js'

/** `explain <rule> [<file> [<id>]]`: a rule in words, and what it came to for things of a document. */
export function addExplainCommand(program: Command, io: CommandLineIo, finish: (code: ExitCode) => void): void {
  addDocumentOptions(
    program
      .command('explain')
      .argument('<rule>', 'the id of a rule, such as relief/way')
      .argument('[file]', 'an installation to judge by it')
      .argument('[id]', 'one thing of it, such as RV1')
      .description('tell a rule in words, and how it judges a thing of an installation'),
  )
    .addHelpText('after', examples)
    .action(async (rule: string, file: string | undefined, id: string | undefined, words: DocumentWords) => {
      finish(await explain({ rule, file, id }, words, io))
    })
}

const examples = `
Examples:
  $ hydronic-rulebook explain vent/termination-height
  $ hydronic-rulebook explain vent/termination-height house.yaml
  $ hydronic-rulebook explain vent/termination-height house.yaml VT1`

interface Asked {
  readonly rule: string
  readonly file: string | undefined
  readonly id: string | undefined
}

async function explain({ rule: name, file, id }: Asked, words: DocumentWords, io: CommandLineIo): Promise<ExitCode> {
  const document = file === undefined ? undefined : loadDocument(file)
  const loaded = await loadRulebook(toOpen(words, document))
  const rule = ruleNamed(name, loaded.rulebook)
  const more = document === undefined ? [] : verdictSections({ rule, document, id }, loaded, words)
  io.out(sheetText(ruleSheet(rule, loaded.rulebook, more), pageFor(io)))
  tellNotes(loaded, true, io)
  return exitCodes.clear
}

function ruleNamed(name: string, { rulesById }: Rulebook): Rule {
  const rule = rulesById.get(name)
  if (rule === undefined) throw unknownName('unknown-rule', `There is no rule "${name}".`, name, [...rulesById.keys()])
  return rule
}

interface Judging {
  readonly rule: Rule
  readonly document: LoadedText
  readonly id: string | undefined
}

function verdictSections(
  { rule, document, id }: Judging,
  { rulebook, equipment }: { readonly rulebook: Rulebook; readonly equipment: readonly unknown[] },
  { phase }: DocumentWords,
): readonly Section[] {
  const { facts } = prepareDocument(document, rulebook, { equipment, ...(phase === undefined ? {} : { phase }) })
  const { installation } = facts
  if (!isDue(rule.from, installation.phase))
    return [plain(`It waits for phase ${rule.from}; the document is in ${installation.phase ?? ''}.`)]
  const verdicts = judge(rulebook, facts).filter((verdict) => verdict.rule.id === rule.id)
  const wanted = id === undefined ? verdicts : verdictsOf(id, verdicts, [...installation.things.keys()])
  if (wanted.length === 0) return [plain(`Nothing here is asked: there is no ${rule.subject}, and the count says so.`)]
  if (wanted.length > 1) return [verdictsSection(wanted)]
  const system = installation.units
  const report = writeReport({ facts, rulebook, verdicts: wanted, document: document.value })
  const questions = questionsOf(report, rulebook, installation)
  return [
    ...wanted.flatMap((verdict) => [
      verdictSection(verdict, system),
      ...report.findings.map((finding) => mendSection({ verdict, finding, questions, system })),
    ]),
  ]
}

function verdictsOf(id: string, verdicts: readonly Verdict[], ids: readonly string[]): readonly Verdict[] {
  const found = verdicts.filter(({ subject }) => subject.id === id)
  if (found.length > 0) return found
  const asked = verdicts.map(({ subject }) => subject.id)
  const message = ids.includes(id)
    ? `This rule is not asked of "${id}"; it is asked of ${asked.join(', ') || 'nothing here'}.`
    : `There is no "${id}".`
  throw unknownName('unknown-id', message, id, asked)
}

function plain(text: string): Section {
  return { heading: 'HERE', tone: 'plain', numbered: false, items: [{ text, rows: [] }] }
}

function unknownName(code: string, message: string, word: string, known: readonly string[]): CouldNotRun {
  const nearest = nearestName(word, known)
  return new CouldNotRun([{ code, pointer: word, message, ...(nearest === undefined ? {} : { nearest }) }])
}
