import { standings, waysOfKnowing, type LeafField, type QuantityName } from '../../model/index.js'
import { quantityWords } from '../quantity-words.js'
import { listOf, ref, scalar, strictMap, type JsonSchema } from './json-schema.js'

/** A field as it may be written, short or long, and the definitions that this rests on. */
export interface FieldSchema {
  readonly schema: JsonSchema
  readonly defs: Readonly<Record<string, JsonSchema>>
}

/** The schema of one field: its short form, or the long form around it. Fields of one type share a definition. */
export function fieldSchema(type: LeafField, name: string, meaning: string | undefined): FieldSchema {
  const shared = sharedName(type) ?? name
  const short = shortForm(type)
  const about = meaning === undefined ? {} : { description: meaning }
  return { schema: { ...ref(shared), ...about }, defs: { [shared]: { anyOf: [short, longForm(short)] } } }
}

/** An answer that is an amount has the long form only, with `within`. */
export function answerSchema(type: LeafField, name: string, meaning: string | undefined): FieldSchema {
  if (type.type !== 'quantity') return fieldSchema(type, name, meaning)
  const about = meaning === undefined ? {} : { description: meaning }
  const long = { ...longForm(shortForm(type)), required: ['value', 'within'] }
  return { schema: { anyOf: [{ const: 'unknown' }, long], ...about }, defs: {} }
}

function sharedName(type: LeafField): string | undefined {
  switch (type.type) {
    case 'quantity':
      return type.quantity
    case 'text':
    case 'reference':
      return type.type
    case 'choice':
      return isYesNo(type.choices) ? 'yes-no' : undefined
    case 'list': {
      const of = sharedName(type.of)
      return of === undefined ? undefined : `list-of-${of}`
    }
    default:
      return neverType(type)
  }
}

function shortForm(type: LeafField): JsonSchema {
  switch (type.type) {
    case 'quantity':
      return amount(type.quantity)
    case 'choice':
      return { ...words(type.choices), description: spoken(type.choices) }
    case 'text':
      return scalar
    case 'reference':
      return { type: 'string', description: 'The id of another thing, or unknown.' }
    case 'list':
      return { anyOf: [listOf(shortForm(type.of)), { const: 'unknown' }] }
    default:
      return neverType(type)
  }
}

/** Whatever begins with a digit and has a unit; the unit itself is judged when the document is read. */
function amount(quantity: QuantityName): JsonSchema {
  const { spoken: name, example } = quantityWords[quantity]
  const description = `A ${name}, such as ${example}; or unknown.`
  if (quantity === 'count')
    return { type: ['string', 'integer'], pattern: '^(unknown|\\d+)$', description, examples: [example] }
  if (quantity === 'number')
    return {
      type: ['string', 'number'],
      pattern: '^(unknown|[-+]?\\.?\\d[\\d.,]*)$',
      description,
      examples: [example],
    }
  if (quantity === 'date')
    return {
      type: ['string', 'integer'],
      pattern: '^(unknown|\\d{4}(-\\d{2}(-\\d{2})?)?)$',
      description,
      examples: [example],
    }
  if (quantity === 'nominalSize')
    return { type: ['string', 'number'], pattern: '^(unknown|\\.?\\d.*)$', description, examples: [example] }
  return { type: 'string', pattern: `^(unknown|[-+]?\\.?\\d.*[A-Za-z%"'°].*)$`, description, examples: [example] }
}

function words(choices: Readonly<Record<string, string>>): JsonSchema {
  return { enum: [...Object.keys(choices), ...(isYesNo(choices) ? [true, false] : []), 'unknown'] }
}

function isYesNo(choices: Readonly<Record<string, string>>): boolean {
  return Object.keys(choices).join() === 'yes,no'
}

function spoken(choices: Readonly<Record<string, string>>): string {
  const told = Object.entries(choices).map(([word, name]) => (word === name ? word : `${word}: ${name}`))
  return `${told.join('; ')}; or unknown.`
}

function longForm(value: JsonSchema): JsonSchema {
  return strictMap(
    { value, ...Object.fromEntries(Object.keys(aboutDefs).map((name) => [name.slice('about-'.length), ref(name)])) },
    ['value'],
  )
}

/** What the long form may say beside the value. */
export const aboutDefs: Readonly<Record<string, JsonSchema>> = {
  'about-standing': {
    enum: standings,
    description: 'How far it is meant: said, taken for granted, or copied from a form.',
  },
  'about-how': { enum: waysOfKnowing, description: 'How it came to be known.' },
  'about-by': { ...scalar, description: 'Who found it out.' },
  'about-at': { ...scalar, description: 'When: YYYY-MM-DD.' },
  'about-because': { ...scalar, description: 'Why it is taken so.' },
  'about-evidence': { ...listOf({ type: 'string' }), description: 'Ids of the photos and papers that show it.' },
  'about-within': { ...scalar, description: 'How far a stated amount may be off: 5 gal.' },
}

function neverType(type: never): never {
  throw new TypeError(`no such type: ${String(type)}`)
}
