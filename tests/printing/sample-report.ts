import type { DemandTold, Finding, Report } from '../../src/findings/index.js'

const base: DemandTold['by'] = { id: 'base', name: 'the model code' }

/** A report by hand with one of everything that a page can tell. */
export const finding: Finding = {
  key: 'relief/way/B1',
  rule: 'relief/way',
  title: 'A way to the relief valve stays open',
  verdict: 'fail',
  severity: 'stop',
  ground: 'code',
  subject: { kind: 'boiler', spoken: 'boiler', id: 'B1', name: 'New boiler', place: 'boiler', listed: true },
  say: { key: 'relief/way/open/fail', params: {} },
  message: 'B1 can be shut off from its relief valve.',
  because: 'A fired boiler with no way out bursts.',
  remedy: 'Move the valve.',
  caution: 'Do not fire the boiler.',
  demands: [
    {
      id: 'open',
      by: base,
      severity: 'stop',
      verdict: 'fail',
      spoke: true,
      value: 'open',
      basis: [
        {
          source: 'Code',
          clause: '1.2',
          edition: '2018',
          ground: 'code',
          known: 'read',
          adopted: 'you state this edition',
        },
      ],
    },
  ],
  evidence: [
    {
      part: 'require',
      fact: 'boiler.reliefWay',
      subject: 'B1',
      result: 'does not hold',
      value: 'blocked',
      operator: 'is',
      demanded: 'open',
      standing: 'stated',
    },
  ],
  witness: ['B1.supply', 'ISO1', 'RV1'],
}

export const height: Finding = {
  ...finding,
  key: 'vent/height/VT1',
  rule: 'vent/height',
  severity: 'must',
  couldBe: 'stop',
  subject: { kind: 'ventTermination', spoken: 'vent termination', id: 'VT1', place: 'vent', listed: true },
  message: 'VT1 stands 14 in above grade; 36 in is demanded by City of Example.',
  remedy: 'Raise it.',
  caution: 'Do not run it covered.',
  demands: [
    {
      id: 'town',
      by: { id: 'town', name: 'City of Example', official: false, writtenBy: 'a contractor' },
      severity: 'must',
      verdict: 'fail',
      spoke: true,
      value: '36 in',
      margin: '-22 in',
      basis: [
        {
          source: 'City of Example, amendments',
          clause: '7-14',
          ground: 'code',
          known: 'read',
          adopted: 'not used for towns',
        },
      ],
      nature: 'amendment',
      since: '2024-07-01',
    },
    {
      id: 'habit',
      by: { id: 'town', name: 'City of Example', official: false },
      severity: 'advice',
      verdict: 'pass',
      spoke: false,
      value: '12 in',
      margin: '+2 in',
      basis: [],
      nature: 'verbal-habit',
    },
    {
      id: 'else',
      by: base,
      severity: 'stop',
      verdict: 'undecided',
      spoke: false,
      value: '20 in',
      basis: [],
      exempted: 'City of Example may let it go (7-15)',
    },
    { id: 'gone', by: base, severity: 'must', verdict: 'not-applicable', spoke: false, value: '99 in', basis: [] },
  ],
  restsOn: 'assumption',
  evidence: [
    {
      part: 'when',
      fact: 'ventTermination.serves',
      subject: 'VT1',
      result: 'holds',
      value: 'exhaust',
      operator: 'is',
      demanded: 'exhaust',
      standing: 'stated',
    },
    {
      part: 'require',
      fact: 'ventTermination.heightAboveGrade',
      subject: 'VT1',
      result: 'does not hold',
      value: '14 in',
      operator: 'at least',
      demanded: '36 in',
      margin: '-22 in',
      si: { low: 0.3556, high: 0.3556 },
      standing: 'assumed',
      how: 'gauge',
      proof: ['P17'],
      equipment: 'equipment/x (Manual, page 3)',
    },
  ],
  witness: ['12 in', '2 in'],
  missing: [{ subject: 'site', fact: 'snowLine' }],
}

export const open = (id: string): Finding => ({
  ...finding,
  key: `safety/co-alarm/${id}`,
  rule: 'safety/co-alarm',
  title: 'An alarm hangs outside each sleeping area',
  verdict: 'undecided',
  severity: 'must',
  subject: { kind: 'space', spoken: 'space', id, place: 'alarms', listed: true },
  say: { key: 'safety/co-alarm/alarm/undecided', params: {} },
  message: `Cannot be told for ${id}: an alarm hangs outside each sleeping area.`,
  caution: 'Leave the house when an alarm sounds.',
  demands: [],
  evidence: [],
  missing: [{ subject: id, fact: 'outsideSleeping' }],
})

export const oneMore = (kind: string, spoken: string, severity: Finding['severity'], owner = ''): Finding => ({
  ...open(`one more ${kind}`),
  key: `one-more/${kind}`,
  severity,
  subject: { kind, spoken, id: `one more ${kind}`, place: 'vent', listed: false },
  say: { key: 'one-more', params: { kind: spoken, owner } },
  message: `Is there a ${spoken} that is not listed?`,
})

const zero = { asked: 9, pass: 1, fail: 2, undecided: 4, notApplicable: 1, broken: 1, accepted: 1, later: 3 }

export const sample: Report = {
  advisory: 'This is advice.',
  outcome: 'failing',
  headline: 'NOT READY: 2 wrong, 7 cannot be told',
  name: 'Sample House',
  tally: zero,
  findings: [
    finding,
    height,
    open('bath'),
    open('hall'),
    oneMore('ventRun', 'vent run', 'stop'),
    oneMore('fixture', 'fixture', 'must'),
    oneMore('opening', 'opening', 'must', 'VT1'),
  ],
  accepted: [
    {
      finding: { ...height, severity: 'should' },
      by: 'the chief inspector',
      evidence: ['LETTER-1'],
      expires: '2026-12-31',
    },
  ],
  contradictions: [
    { code: 'more-listed', subject: 'boiler', fact: 'count', message: 'One boiler is said, two are listed.' },
  ],
  broken: [{ rule: 'electrical/load', subject: 'TX1', severity: 'must', error: 'it threw' }],
  unheard: [{ authority: 'county', message: 'county is named, but no overlay was opened.' }],
  missing: [
    { subject: 'ventRun', fact: 'count', decides: 1, worst: 'stop', rules: ['vent/length'] },
    ...Array.from({ length: 12 }, (_, index) => ({
      subject: `X${index}`,
      fact: `field${index}`,
      decides: 12 - index,
      worst: 'must' as const,
      rules: [`a/${index}`],
    })),
  ],
  known: { values: 20, photo: 1, gauge: 2, typed: 10, assumed: 4, template: 3 },
  provenance: {
    package: 'hydronic-rulebook 0.0.0',
    rulebook: {
      ruleSets: [{ name: 'base', version: '0.0.0' }],
      overlays: [
        {
          id: 'town',
          name: 'City of Example',
          layer: 'town',
          official: false,
          writtenBy: 'a contractor',
          reviewedBy: 'nobody',
          lastVerified: '2020-01-01',
          stale: true,
          named: true,
        },
      ],
      hash: 'abcdef0123456789abcdef0123456789',
    },
    document: '0123456789abcdef0123456789abcdef',
    judgedOn: '2025-09-20',
    phase: 'final',
  },
}
