import type { Entry, Installation } from '../model/index.js'
import type { BasisData, Demand, Ground, Rulebook } from '../rulebook/index.js'
import type { BasisTold } from './report.js'

/** A demand's sources for this house: those of its family first, each beside the edition that the document states. */
export function tellBasis(
  { basis, authority }: Pick<Demand, 'basis' | 'authority'>,
  rulebook: Rulebook,
  installation: Installation,
): readonly BasisTold[] {
  const familyOf = (one: BasisData): string => rulebook.sources.get(one.source)?.family ?? 'none'
  const own = wordOf(installation.things.get('building')?.entries.occupancy)
  const preferred = own === undefined ? basis : basis.filter((one) => fits(familyOf(one), own, basis.map(familyOf)))
  // Where the own family is only recalled, the text that was read stands beside it.
  const told = preferred.some((one) => one.known === 'read')
    ? preferred
    : basis.filter((one) => preferred.includes(one) || one.known === 'read')
  return (told.length === 0 ? basis : told).map((one) => ({
    source: rulebook.sources.get(one.source)?.title ?? one.source,
    ...(one.clause === undefined ? {} : { clause: one.clause }),
    ...(one.edition === undefined ? {} : { edition: one.edition }),
    ground: one.ground,
    known: one.known,
    adopted: authority.layer === 'base' ? adoptedOf(one, installation) : "the authority's own demand",
  }))
}

/** One- and two-family houses are judged by the residential family where it has an entry, others by the rest. */
function fits(family: string, occupancy: string, families: readonly string[]): boolean {
  if (occupancy === 'dwelling')
    return !families.includes('residential') || family === 'residential' || family === 'none'
  return family !== 'residential'
}

function adoptedOf(basis: BasisData, installation: Installation): string {
  if (basis.ground !== 'code') return 'not a code figure'
  const stated = installation.things.get('jurisdiction')?.entries[`codes.${basis.source}`]?.text
  if (stated === undefined) return 'model-code figure, not checked against your adopted text'
  return stated === basis.edition ? `you state this edition` : `you state the ${stated} edition`
}

function wordOf(entry: Entry | undefined): string | undefined {
  return entry?.value.type === 'word' ? entry.value.word : undefined
}

/** How a ground is told. */
export const spokenGrounds: Readonly<Record<Ground, string>> = {
  code: 'required by code',
  listing: 'required by the listing',
  instructions: "required by the maker's instructions",
  utility: 'required by the utility',
  physics: 'will not work',
  practice: 'good practice',
}

/** Who demands, for a sentence. */
export function spokenAuthority(ground: Ground, name: string, base: boolean): string {
  if (!base) return name
  switch (ground) {
    case 'code':
      return 'the model code'
    case 'listing':
      return 'the listing'
    case 'instructions':
      return 'the maker'
    case 'utility':
      return 'the utility'
    case 'physics':
      return 'physics'
    case 'practice':
      return 'good practice'
    default:
      return neverGround(ground)
  }
}

function neverGround(ground: never): never {
  throw new TypeError(`no such ground: ${String(ground)}`)
}
