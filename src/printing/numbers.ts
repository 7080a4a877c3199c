import type { Evidence, Finding } from '../findings/index.js'
import { spokenFact, spokenWays } from './spoken-words.js'

/** The comparisons that a failing finding is about, each once: those of the demand that speaks, as far as they do not hold. */
export function decisive({ evidence }: Finding): readonly Evidence[] {
  const shown = evidence.filter(({ part, result }) => part === 'require' && result === 'does not hold')
  return [...new Map(shown.map((one) => [`${one.fact} ${one.operator} ${one.demanded ?? ''}`, one])).values()]
}

/** Number against demand: "hot water: 138 F; at most 120 F demanded; 18 F too much". */
export function tellNumbers(evidence: Evidence, kind?: string, verb = 'demanded'): string {
  const { fact, value, operator, demanded, margin } = evidence
  const limit = demanded === undefined ? undefined : `${limitWords(operator, demanded)} ${verb}`
  return [
    `${spokenFact(fact, kind)}: ${value ?? 'not known'}`,
    limit,
    margin === undefined ? undefined : tellMargin(margin, operator),
  ]
    .filter((part) => part !== undefined)
    .join('; ')
}

/** A limit that is itself only known to be "at least 14 psi" does not say so twice. */
export function limitWords(operator: string, demanded: string): string {
  return operator === 'is' || demanded.startsWith(operator) ? demanded : `${operator} ${demanded}`
}

/** A signed margin in words. */
export function tellMargin(margin: string, operator: string): string {
  const amount = margin.replace(/^[-+]/, '')
  if (margin.startsWith('+')) return `${amount} to spare`
  if (!margin.startsWith('-')) return 'just at the limit'
  return /most|less/.test(operator) ? `${amount} too much` : `${amount} too little`
}

/** How well a value is known. */
export function tellKnown(evidence: Evidence): string {
  const { standing, how, proof, equipment, written } = evidence
  const said = [
    standing === 'assumed' ? 'ON AN ASSUMPTION' : undefined,
    standing === 'stated, not traced' ? 'stated, not traced' : undefined,
    how === undefined ? undefined : spokenWays[how],
    equipment === undefined ? undefined : `equipment file ${equipment}`,
    proof === undefined ? undefined : `evidence ${proof.join(', ')}`,
  ].filter((part) => part !== undefined)
  if (said.length > 0) return said.join('; ')
  return written === undefined ? 'worked out from what is stated' : 'stated, with nothing to show for it'
}
