import { checkInstallation } from '../../src/check-installation.js'
import type { Finding, Report } from '../../src/findings/index.js'
import { choice, family, kind, listOf, quantity, reference, text, yesNo } from '../../src/model/index.js'
import { fact, known } from '../../src/facts/index.js'
import { definePlugin, openRulebook, type Rulebook } from '../../src/rulebook/index.js'

const vessel = family('vessel', { spoken: 'vessel', fields: { limit: quantity('pressure') } })
const tag = kind('tag', { spoken: 'tag', place: 'boiler', section: 'parts', fields: { shows: quantity('pressure') } })
const tank = kind('tank', {
  spoken: 'tank',
  place: 'boiler',
  families: [vessel],
  fields: {
    ...vessel.fields,
    pressure: quantity('pressure'),
    color: choice({ red: 'red', blue: 'blue', green: 'green' }),
    lined: yesNo,
    liners: listOf(choice({ glass: 'glass', stone: 'stone' })),
    room: reference('space', { countedAs: 'tanks' }),
  },
  parts: { tags: tag },
})
const space = kind('space', { spoken: 'space', place: 'papers', section: 'spaces', fields: { damp: yesNo } })
const evidence = kind('evidence', {
  spoken: 'evidence',
  place: 'papers',
  section: 'evidence',
  fields: { type: choice({ photo: 'photo', scan: 'scan' }) },
})
const jurisdiction = kind('jurisdiction', {
  spoken: 'jurisdiction',
  place: 'papers',
  section: 'singleton',
  fields: { authorities: listOf(text), applicationDate: quantity('date') },
})
const site = kind('site', {
  spoken: 'site',
  place: 'papers',
  section: 'singleton',
  fields: { altitude: quantity('length') },
})
const installation = kind('installation', { spoken: 'installation', place: 'papers', section: 'singleton', fields: {} })

const fails = fact('fails', {
  of: tank,
  type: yesNo,
  read: () => {
    throw new Error('a fact that throws')
  },
})
const measured = fact('measured', {
  of: tank,
  type: quantity('pressure'),
  answerable: true,
  read: ({ ask }) => {
    const pressure = ask('pressure')
    return pressure.state === 'number' ? pressure : { ...pressure }
  },
})
const double = fact('double', {
  of: tank,
  type: quantity('pressure'),
  read: ({ ask }) => {
    const answer = ask('pressure')
    return answer.state === 'number' ? known(2 * answer.low) : answer
  },
})

export const basis = [{ source: 'book', ground: 'code', known: 'read', clause: '1' }]
export const habit = [{ source: 'book', ground: 'practice', known: 'recalled' }]
const frame = { title: 'A tank is right', subject: 'tank', say: { fail: '{id} is wrong.' }, because: 'It matters.' }

/** A rule about tanks with the demands given; the rest is filled in. */
export function rule(words: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return { ...frame, ...words }
}

export function demand(
  id: string,
  severity: string,
  require: unknown,
  more: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, unknown>> {
  return { id, severity, require, basis: severity === 'stop' || severity === 'must' ? basis : habit, ...more }
}

export function parts(
  rules: Readonly<Record<string, unknown>>,
  overlays: readonly Readonly<Record<string, unknown>>[] = [],
): Parameters<typeof openRulebook>[0] {
  const small = definePlugin({
    name: 'small',
    version: '1.0.0',
    contract: 1,
    kinds: [tank, space, evidence, jurisdiction, site, installation],
    facts: [fails, measured, double],
    rules,
    sources: { book: { title: 'The Book', family: 'none' } },
  })
  return { ruleSets: [small], overlays }
}

export function open(
  rules: Readonly<Record<string, unknown>>,
  overlays: readonly Readonly<Record<string, unknown>>[] = [],
): Rulebook {
  return openRulebook(parts(rules, overlays))
}

/** A town with its changes; official unless said otherwise. */
export function town(name: string, changes: readonly unknown[], official = 'true'): Readonly<Record<string, unknown>> {
  return {
    overlay: name,
    authority: { name: `Town of ${name}`, layer: 'town' },
    written: { by: 'somebody', official },
    basis: { source: 'book', ground: 'code', known: 'read' },
    changes,
  }
}

/** A document with one counted tank in it, and nobody but the model code to ask. */
export function house(
  tankFields: Readonly<Record<string, unknown>>,
  more: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, unknown>> {
  return {
    installation: '1',
    complete: { tank: '1', space: '0' },
    jurisdiction: { authorities: [] },
    components: [{ id: 'T1', kind: 'tank', ...tankFields }],
    ...more,
  }
}

export function check(document: Readonly<Record<string, unknown>>, rulebook: Rulebook, judgedOn?: string): Report {
  return checkInstallation({ ...document, installation: 1 }, rulebook, judgedOn === undefined ? {} : { judgedOn })
}

export function findingOf(report: Report, key: string): Finding | undefined {
  return report.findings.find((finding) => finding.key === key)
}
