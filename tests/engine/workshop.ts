import { choice, jurisdiction, kind, quantity, reference } from '../../src/model/index.js'
import { fact, word } from '../../src/facts/index.js'
import { defineCheck, definePlugin, openRulebook } from '../../src/rulebook/index.js'
import type { InstallationWritten } from '../../src/model/index.js'

// A small trade of the tests' own, so that the engine is tested apart from the base rule set.

const kettle = kind('kettle', {
  spoken: 'kettle',
  place: 'boiler',
  fields: { limit: quantity('pressure'), fuel: choice({ gas: 'gas', oil: 'oil', wood: 'wood' }) },
})

const valve = kind('valve', {
  spoken: 'valve',
  place: 'relief',
  fields: { opensAt: quantity('pressure'), kettle: reference('kettle', { countedAs: 'valves' }) },
})

const soundness = defineCheck('soundness', {
  of: kettle,
  answers: ['sound', 'cracked'],
  judge: ({ subject }) => {
    if (subject.id.startsWith('Broken')) throw new Error('the gauge fell off')
    return word(subject.id.startsWith('Cracked') ? 'cracked' : 'sound')
  },
})

const margin = fact('margin', {
  of: kettle,
  type: quantity('pressure'),
  read: ({ ask }) => ask('limit'),
})

const basis = [{ source: 'manual', ground: 'instructions', known: 'read' }]
const practice = [{ source: 'manual', ground: 'practice', known: 'recalled' }]
const words = { title: 'A rule of the workshop', because: 'The workshop says so.' }
const say = { fail: '{id} does not do.' }

const workshop = definePlugin({
  name: 'workshop',
  version: '1.0.0',
  contract: 1,
  kinds: [kettle, valve, jurisdiction],
  facts: [margin],
  checks: [soundness],
  sources: { manual: { title: 'Manual of the workshop', family: 'none' } },
  rules: {
    'kettle/fuel': {
      ...words,
      subject: 'kettle',
      measure: { fact: 'kettle.fuel', operator: 'oneOf' },
      demands: [
        { id: 'clean', severity: 'should', value: ['gas', 'oil'], basis: practice },
        { id: 'cleanest', severity: 'advice', value: ['gas'], basis: practice },
      ],
      say,
    },
    'kettle/sound': {
      ...words,
      subject: 'kettle',
      demands: [{ id: 'sound', severity: 'stop', require: { 'kettle.soundness': 'sound' }, basis }],
      say,
    },
    'kettle/valves': {
      ...words,
      subject: 'kettle',
      demands: [{ id: 'one', severity: 'must', require: { 'kettle.valves': { atLeast: '1' } }, basis }],
      say,
    },
    'valve/within-limit': {
      ...words,
      subject: 'valve',
      when: { 'valve.kettle.fuel': { isNot: 'wood' } },
      demands: [
        {
          id: 'limit',
          severity: 'must',
          require: { 'valve.opensAt': { atMost: { fact: 'valve.kettle.limit' } } },
          basis,
        },
        { id: 'band', severity: 'must', require: { 'valve.opensAt': { between: ['5 psi', '150 psi'] } }, basis },
      ],
      say,
    },
    'workshop/applied': {
      ...words,
      subject: 'jurisdiction',
      from: 'final',
      demands: [
        {
          id: 'date',
          severity: 'must',
          require: { 'jurisdiction.applicationDate': { moreThan: '2020-01-01' } },
          basis,
        },
      ],
      say,
    },
  },
})

export const rulebook = openRulebook({ ruleSets: [workshop] })

/** A written document of the workshop's trade; the types of the built-in kinds do not know it. */
export function written(words: Readonly<Record<string, unknown>>): InstallationWritten {
  return { installation: 1, ...words }
}

const fuels = ['gas', 'oil', 'wood', 'unknown']

/** A document with some things right, some wrong and some not said, different for each number. */
export function manyThings(seed: number): InstallationWritten {
  const kettles = Array.from({ length: 1 + (seed % 4) }, (_, at) => ({
    id: `${seed % 7 === 6 && at === 0 ? 'Broken' : 'K'}${at}`,
    kind: 'kettle',
    fuel: fuels[(seed + at) % fuels.length],
    limit: (seed + at) % 3 === 0 ? 'unknown' : `${20 + ((seed * 7 + at) % 40)} psi`,
  }))
  const valves = Array.from({ length: seed % 5 }, (_, at) => ({
    id: `V${at}`,
    kind: 'valve',
    opensAt: (seed + at) % 4 === 0 ? 'unknown' : `${10 + ((seed * 11 + at * 3) % 50)} psi`,
    kettle: kettles[at % kettles.length]?.id,
  }))
  return written({
    name: `number ${seed}`,
    ...(seed % 2 === 0 ? { complete: { kettle: kettles.length } } : {}),
    ...(seed % 3 === 0 ? { phase: 'rough' } : {}),
    ...(seed % 5 === 0 ? { jurisdiction: { authorities: [], applicationDate: '2021' } } : {}),
    components: [...kettles, ...valves],
  })
}

/** Two kettles: one that is all known, one of which little is. */
export const pair = written({
  complete: { kettle: 2, valve: 1 },
  components: [
    { id: 'K1', kind: 'kettle', fuel: 'gas', limit: '30 psi' },
    { id: 'K2', kind: 'kettle', fuel: 'wood' },
    { id: 'V1', kind: 'valve', opensAt: '40 psi', kettle: 'K1' },
  ],
})
