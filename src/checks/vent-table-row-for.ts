import { isSettled, type Answer, type Context, type Missing } from '../facts/index.js'
import type { Thing } from '../model/index.js'

/** The row of the maker's table for the size of a vent run. */
export type VentTableRow =
  | { readonly found: 'row'; readonly row: Thing }
  /** The table is complete and has no row for this size. */
  | { readonly found: 'none'; readonly appliance: string; readonly size: number }
  | { readonly found: 'unknown'; readonly missing: readonly Missing[] }

/** Looks a vent run up in the table of its appliance. */
export function ventTableRowFor({ ask, find, parts }: Context): VentTableRow {
  const size = ask('size')
  const appliance = ask('appliance')
  const boiler = appliance.state === 'word' ? find(appliance.word) : undefined
  if (boiler === undefined || !isExact(size))
    return { found: 'unknown', missing: [...appliance.missing, ...size.missing] }
  const { things, more } = parts('ventTable', boiler)
  const rows = things.map((row) => ({ row, size: ask('size', row) }))
  const match = rows.find((one) => isExact(one.size) && one.size.low === size.low)
  if (match !== undefined) return { found: 'row', row: match.row }
  const missing = [
    ...rows.flatMap((one) => one.size.missing),
    ...(more > 0 ? [{ subject: boiler.id, fact: 'ventTable' }] : []),
  ]
  return missing.length > 0 ? { found: 'unknown', missing } : { found: 'none', appliance: boiler.id, size: size.low }
}

function isExact(answer: Answer): answer is Answer & { readonly state: 'number' } {
  return answer.state === 'number' && isSettled(answer)
}
