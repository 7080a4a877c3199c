import type { RuleData } from './rule-data.js'
import type { ValueReading } from './value.js'

/** Words that a text may use beside facts. */
export const plainPlaceholders: readonly string[] = ['id', 'demand', 'authority', 'owner']

/** The placeholders of a text, in order: `{ventTermination.heightAboveGrade}`. */
export function placeholdersIn(text: string): readonly string[] {
  return [...text.matchAll(/\{([^{}]*)\}/g)].map((match) => match[1] ?? '')
}

/** Each placeholder is a plain word or a fact that the rule may mention. */
export function checkPlaceholders(
  data: Pick<RuleData, 'say' | 'demands' | 'remedy' | 'caution' | 'because'>,
  values: ValueReading,
): void {
  const texts: readonly (readonly [string | undefined, readonly (string | number)[]])[] = [
    [data.say?.fail, ['say', 'fail']],
    [data.because, ['because']],
    [data.remedy, ['remedy']],
    [data.caution, ['caution']],
    ...data.demands.map((demand, index) => [demand.say, ['demands', index, 'say']] as const),
  ]
  for (const [text, steps] of texts) if (text !== undefined) checkText(text, steps, values)
}

export function checkText(text: string, steps: readonly (string | number)[], values: ValueReading): void {
  for (const name of placeholdersIn(text)) if (!plainPlaceholders.includes(name)) values.resolve(name, steps)
}
