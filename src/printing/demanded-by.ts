import { spokenGrounds, type BasisTold, type DemandTold, type Finding } from '../findings/index.js'
import { tellMargin } from './numbers.js'

/** Who puts the demand that speaks, on what ground, with clause and edition. */
export function tellSpoken(demand: DemandTold, finding: Pick<Finding, 'ground'>): string {
  const sources = tellSources(demand)
  if (isBase(demand)) return `${spokenGrounds[finding.ground]}: ${sources}`
  return `${demand.by.name}: ${[sources, tellNature(demand), tellWriter(demand)].filter((part) => part !== undefined).join('; ')}`
}

/** Another demand that applies, in one line; sources that the reader has just read are not told again. */
export function tellOther(demand: DemandTold, spoken?: DemandTold): string {
  const sources = tellSources(demand)
  const told = spoken !== undefined && tellSources(spoken) === sources ? 'same source' : sources
  const value =
    demand.value === undefined ? '' : ` asks ${demand.value === 'not known' ? 'for what is not known' : demand.value},`
  return [
    `${demand.severity}, ${demand.by.name}:${value} ${outcomes[demand.verdict]}${missedBy(demand)}`,
    told,
    tellNature(demand),
    tellWriter(demand),
  ]
    .filter((part) => part !== undefined && part !== '')
    .join('; ')
}

const outcomes: Readonly<Record<DemandTold['verdict'], string>> = {
  pass: 'met',
  fail: 'not met',
  undecided: 'cannot be told',
  'not-applicable': 'does not apply',
}

function missedBy({ margin, verdict }: DemandTold): string {
  if (margin === undefined || verdict === 'undecided' || verdict === 'not-applicable') return ''
  return margin.startsWith('-') ? ` by ${margin.slice(1)}` : ` (${tellMargin(margin, '')})`
}

function isBase(demand: DemandTold): boolean {
  return demand.by.official === undefined
}

/** Sources with their clauses gathered: "International Residential Code P2708.4, P2713.3"; what is true of all is said once. */
export function tellSources(demand: DemandTold): string {
  const base = isBase(demand)
  const sources = [...new Set(demand.basis.map((one) => one.source))].map((title) => {
    const basis = demand.basis.filter((one) => one.source === title)
    return { name: tellSource(title, basis, demand.by.name), remarks: remarksOn(basis, base) }
  })
  const shared = sources[0]?.remarks.filter((remark) => sources.every(({ remarks }) => remarks.includes(remark))) ?? []
  const told = sources.map(({ name, remarks }) =>
    withRemarks(
      name,
      remarks.filter((remark) => !shared.includes(remark)),
    ),
  )
  return [told.join(', '), ...shared].filter((part) => part !== '').join('; ')
}

function withRemarks(name: string, remarks: readonly string[]): string {
  return remarks.length === 0 ? name : `${name} (${remarks.join('; ')})`
}

function tellSource(title: string, basis: readonly BasisTold[], authority: string): string {
  const editions = [...new Set(basis.flatMap((one) => one.edition ?? []))]
  const clauses = basis.flatMap((one) => (one.clause === undefined ? [] : [`${one.clause}${recalled(one, basis)}`]))
  const own = title.startsWith(`${authority}, `) ? title.slice(authority.length + 2) : title
  return [own, editions.map((edition) => `(${edition})`).join(' '), clauses.join(', ')]
    .filter((part) => part !== '')
    .join(' ')
}

function remarksOn(basis: readonly BasisTold[], base: boolean): readonly string[] {
  const adopted = [...new Set(basis.filter((one) => base && one.ground === 'code').map((one) => one.adopted))]
  return basis.every(isRecalled) ? ['from memory, not read', ...adopted] : adopted
}

function isRecalled({ known }: BasisTold): boolean {
  return known === 'recalled'
}

function recalled(one: BasisTold, all: readonly BasisTold[]): string {
  return isRecalled(one) && !all.every(isRecalled) ? ' (from memory)' : ''
}

function tellNature({ nature, since }: DemandTold): string | undefined {
  const said = [
    nature === 'verbal-habit' ? 'this office has been heard to ask' : nature?.replace('-', ' '),
    since === undefined ? undefined : `since ${since}`,
  ]
  return said.filter((part) => part !== undefined).join(' ') || undefined
}

function tellWriter({ by }: DemandTold): string | undefined {
  return by.official === false ? `unofficial: written by ${by.writtenBy ?? 'somebody else'}, ask the office` : undefined
}
