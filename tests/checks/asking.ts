import { builtInChecks, builtInFacts } from '../../src/checks/index.js'
import { askFact, defineCatalogue, gatherFacts, type Answer, type Facts } from '../../src/facts/index.js'
import { builtInKinds, defineModel, tryReadInstallation } from '../../src/model/index.js'
import { printIn, printQuantity } from '../../src/units/index.js'

export const handles = [...builtInFacts, ...builtInChecks]
export const model = defineModel(
  builtInKinds,
  handles.filter((handle) => handle.answerable).map(({ of, name, type }) => ({ of, name, field: type })),
)
export const catalogue = defineCatalogue(model, handles)

/** A document as a test writes it. */
export type Written = Readonly<Record<string, unknown>>

export function factsOf(document: Written): Facts {
  const read = tryReadInstallation({ installation: '1', ...document }, model)
  if (!read.ok) throw new Error(read.problems.map(({ pointer, message }) => `${pointer}: ${message}`).join('\n'))
  return gatherFacts(read.installation, catalogue)
}

/** What a fact says about one thing on what is stated. */
export function ask(document: Written, id: string, fact: string): Answer {
  return askIn(factsOf(document), id, fact)
}

export function askIn({ strict }: Facts, id: string, fact: string): Answer {
  const thing = strict.installation.things.get(id)
  if (thing === undefined) throw new Error(`the document has no ${id}`)
  return askFact(catalogue, strict, thing, fact)
}

/** The word of an answer; `unknown` where there is none. */
export function wordOf(answer: Answer): string {
  return answer.state === 'word' ? answer.word : answer.state
}

const units = { pressure: ['psi', 1], heatRate: ['Btu/h', 0], length: ['ft', 2], apparentPower: ['VA', 1] } as const

/** The bounds of a number, printed: `['no lower limit', '30 psi']`; `unknown` where there are none. */
export function boundsOf(answer: Answer, quantity: keyof typeof units | 'count'): readonly string[] {
  if (answer.state !== 'number') return [answer.state]
  const ends = answer.low === answer.high ? [answer.low] : [answer.low, answer.high]
  if (quantity === 'count') return ends.map((end) => printQuantity(end, 'count', 'ip'))
  const [unit, decimals] = units[quantity]
  return ends.map((end) => printIn(end, quantity, unit, decimals))
}

/** What would make an answer more definite: `['RV1.setPressure']`. */
export function missingOf(answer: Answer): readonly string[] {
  return answer.missing.map(({ subject, fact }) => `${subject}.${fact}`)
}
