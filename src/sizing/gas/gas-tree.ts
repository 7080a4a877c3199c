import { firstImpossible } from '../first-impossible.js'

/** One length of gas pipe between two joints. */
export interface GasSection {
  readonly id: string
  /** Section that feeds this one; none at the meter. */
  readonly after?: string
  /** m, with what its fittings count for. */
  readonly length: number
  /** W, of the appliance at its end; zero where it only feeds other sections. */
  readonly input: number
}

/** A section, with what lies before and behind it. */
export interface GasRun {
  readonly section: GasSection
  /** From the meter to this section, which comes last. */
  readonly way: readonly GasSection[]
  /** W, of all appliances behind its start. */
  readonly load: number
  /** m, from the meter through this section to the farthest outlet behind it. */
  readonly farthest: number
}

/** Gas piping ordered from the meter on, or why it is no tree. */
export type GasTree =
  { readonly ok: true; readonly runs: readonly GasRun[] } | { readonly ok: false; readonly why: string }

/**
 * Orders gas sections into a tree, in the order given; every section belongs to one way from the meter.
 *
 * @example
 * gasTree([{ id: 'G1', length: 7, input: 0 }, { id: 'G2', after: 'G1', length: 4, input: 21980 }]) // G1 carries 21980 W
 */
export function gasTree(sections: readonly GasSection[]): GasTree {
  const why = impossibleTree(sections)
  if (why !== undefined) return { ok: false, why }
  const ways = sections.map((section) => wayTo(section, sections))
  const broken = ways.find((way) => typeof way === 'string')
  if (broken !== undefined) return { ok: false, why: broken }
  const known = ways.filter((way) => typeof way !== 'string')
  return { ok: true, runs: known.map((way) => runOf(way, known)) }
}
/** From the meter to a section. */
interface Way {
  readonly last: GasSection
  readonly sections: readonly GasSection[]
}

function runOf({ last, sections }: Way, ways: readonly Way[]): GasRun {
  const through = ways.filter((way) => way.sections.includes(last))
  return {
    section: last,
    way: sections,
    load: through.reduce((sum, way) => sum + way.last.input, 0),
    farthest: Math.max(...through.map(lengthOf)),
  }
}

function lengthOf({ sections }: Way): number {
  return sections.reduce((sum, { length }) => sum + length, 0)
}

function wayTo(last: GasSection, all: readonly GasSection[]): Way | string {
  const sections = [last]
  for (let first = last; first.after !== undefined;) {
    const { id, after } = first
    const before = all.find((section) => section.id === after)
    if (before === undefined) return `Gas section ${id} comes after ${after}, which is not listed.`
    if (sections.includes(before)) return `Gas section ${before.id} feeds itself.`
    sections.unshift(before)
    first = before
  }
  return { last, sections }
}

function impossibleTree(sections: readonly GasSection[]): string | undefined {
  if (sections.length === 0) return 'No gas section is listed.'
  const twice = sections.find(({ id }, index) => sections.findIndex((other) => other.id === id) !== index)
  if (twice !== undefined) return `Two gas sections are called ${twice.id}.`
  return firstImpossible(
    ...sections.map(({ id, length }) => [`length of gas section ${id}`, length, 'above zero'] as const),
    ...sections.map(({ id, input }) => [`heat input at gas section ${id}`, input, 'zero or more'] as const),
  )
}
