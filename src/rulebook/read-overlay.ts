import { isMap, nearestIn, problemList, type Problem } from '../model/index.js'
import { checkShape } from './check-shape.js'
import type { Overlay } from './overlay.js'
import type { Change, Compiling, Found, OverlayReading } from './overlay-change.js'
import { compileAdd } from './read-added-rule.js'
import { compileDemandChange } from './read-demand-change.js'
import { compileExempt } from './read-exemption.js'
import type { OverlayData } from './rule-data.js'
import { overlayShape } from './rule-shape.js'
import type { Authority } from './rule.js'

export interface OverlayRead {
  readonly overlay?: Overlay
  readonly problems: readonly Problem[]
  readonly warnings: readonly Problem[]
}

/** Reads and compiles one authority's file against the rules of the rule sets. */
export function readOverlay(raw: unknown, reading: OverlayReading): OverlayRead {
  const problems = problemList()
  const warnings = problemList()
  const data = checkShape(overlayShape, raw, [], problems)
  const overlay = data === undefined ? undefined : compileOverlay(data, { ...reading, problems, warnings })
  const named = (found: readonly Problem[]): readonly Problem[] =>
    found.map((problem) => ({ ...problem, file: problem.file ?? reading.file }))
  return {
    ...(overlay === undefined || problems.found.length > 0 ? {} : { overlay }),
    problems: named(problems.found),
    warnings: named(warnings.found),
  }
}

function compileOverlay(data: OverlayData, compiling: Compiling): Overlay {
  const authority = authorityOf(data)
  const sources = new Map([...compiling.sources, ...Object.entries(data.sources ?? {})])
  const found: Found = { demands: [], exemptions: [], added: [] }
  for (const [index, change] of data.changes.entries())
    compileChange(change, { data, authority, found, steps: ['changes', index], compiling: { ...compiling, sources } })
  const ids = found.demands.map(({ rule, demand }) => `${rule} ${demand.id}`)
  for (const [index, id] of ids.entries()) {
    if (ids.indexOf(id) !== index)
      compiling.problems.add(
        'duplicate-id',
        ['changes'],
        `A second demand on one rule has an id of its own: ${id.replace(' ', ', demand ')}.`,
        { nearest: 'id' },
      )
  }
  return Object.freeze({ id: data.overlay, authority, ...found })
}

function authorityOf({ overlay, authority, written }: OverlayData): Authority {
  return Object.freeze({
    id: overlay,
    name: authority.name,
    layer: authority.layer,
    official: written.official === 'true' || written.official === 'yes',
    writtenBy: written.by,
    ...(written.reviewedBy === undefined ? {} : { reviewedBy: written.reviewedBy }),
    ...(written.lastVerified === undefined ? {} : { lastVerified: written.lastVerified }),
  })
}

const verbs = ['demand', 'exempt', 'add'] as const

/** The verb decides which shape is meant, so that a typo is told as a typo. */
function compileChange(raw: unknown, change: Change): undefined {
  const { steps, compiling } = change
  const keys = isMap(raw) ? Object.keys(raw) : []
  const said = verbs.filter((verb) => keys.includes(verb))
  if (said.length !== 1) {
    const near = keys.map((key) => nearestIn(key, verbs)).find(({ nearest }) => nearest !== undefined) ?? {}
    return compiling.problems.add('no-verb', steps, 'A change has one of the three verbs demand, exempt, add.', near)
  }
  if (said[0] === 'demand') return compileDemandChange(raw, change)
  return said[0] === 'exempt' ? compileExempt(raw, change) : compileAdd(raw, change)
}
