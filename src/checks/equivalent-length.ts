import { atLeastZero, fact, rebound, unknown, type Answer, type Context, type Missing } from '../facts/index.js'
import { quantity, ventRun, type Thing } from '../model/index.js'
import { equivalentVentLength } from '../sizing/index.js'
import { printIn } from '../units/index.js'
import { printBounds } from './print-bounds.js'
import { ventTableRowFor, type VentTableRow } from './vent-table-row-for.js'

/**
 * Length of the run as its maker counts it: straight pipe, and for each elbow the length from the maker's table.
 *
 * Elbows that are not listed, or of which something is not known, can only add.
 */
export const equivalentLength = fact('equivalentLength', { of: ventRun, type: quantity('length'), read })

function read(context: Context): Answer {
  const { ask, parts, subject, installation } = context
  const straight = ask('straightLength')
  const { things, more } = parts('fittings')
  const row = things.length === 0 ? undefined : ventTableRowFor(context)
  const fittings = things.map((thing) => fittingOf(thing, row, context))
  const pipe = atLeastZero(straight)
  const at = (end: 'low' | 'high'): number =>
    equivalentVentLength({
      straight: pipe[end],
      fittings: fittings.map(({ name, count, each }) => ({ name, count: count[end], each: each[end] })),
    }).value
  const low = at('low')
  const high = more > 0 ? Infinity : at('high')
  const printLength = (length: number): string => printIn(length, 'length', installation.units === 'si' ? 'm' : 'ft', 2)
  const terms = fittings.map(
    ({ name, count, each }) => `${printBounds(count, String)} ${name} x ${printBounds(each, printLength)}`,
  )
  const untold = [...straight.missing, ...fittings.flatMap((one) => one.missing)]
  const missing = more > 0 ? [...untold, { subject: subject.id, fact: 'fittings' }] : untold
  return {
    ...rebound([], low, high),
    witness: [`${printBounds(pipe, printLength)} straight`, ...terms],
    missing: low === high ? [] : missing,
  }
}

interface Bounds {
  readonly low: number
  readonly high: number
}

interface Fitting {
  readonly name: string
  readonly count: Bounds
  readonly each: Bounds
  readonly missing: readonly Missing[]
}

const angles = ['elbow90', 'elbow45'] as const

function fittingOf(thing: Thing, row: VentTableRow | undefined, { ask }: Context): Fitting {
  const count = ask('count', thing)
  const type = ask('type', thing)
  const fields = type.state === 'word' ? [type.word] : angles
  const lengths = fields.map((field) => (row?.found === 'row' ? ask(field, row.row) : unlisted(row)))
  const bounds = lengths.map(atLeastZero)
  return {
    name: type.state === 'word' ? type.word : 'elbow',
    count: atLeastZero(count),
    each: { low: Math.min(...bounds.map((one) => one.low)), high: Math.max(...bounds.map((one) => one.high)) },
    missing: [...count.missing, ...type.missing, ...lengths.flatMap((one) => one.missing)],
  }
}

/** Without a row nobody knows what an elbow counts. */
function unlisted(row: VentTableRow | undefined): Answer {
  if (row?.found === 'unknown') return unknown({ missing: row.missing })
  return unknown(row?.found === 'none' ? { missing: [{ subject: row.appliance, fact: 'ventTable' }] } : {})
}
