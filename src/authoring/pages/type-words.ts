import type { LeafField, Model } from '../../model/index.js'
import { quantityWords } from '../quantity-words.js'
import { code, orList } from './markdown.js'

/** What may be written for a field: `` pressure, such as `30 psi` ``. */
export function typeWords(type: LeafField, model: Model): string {
  switch (type.type) {
    case 'quantity':
      return quantityText(type.quantity)
    case 'choice':
      return choiceText(type.choices)
    case 'text':
      return 'words'
    case 'reference':
      return `id of ${orList(type.to.map((name) => `a ${spokenName(name, model)}`))}${type.countedAs === undefined ? '' : `; counted there as ${code(type.countedAs)}`}`
    case 'list':
      return `list: ${typeWords(type.of, model)}`
    default:
      return neverType(type)
  }
}

function quantityText(quantity: keyof typeof quantityWords): string {
  const { spoken, example } = quantityWords[quantity]
  return `${spoken}, such as ${code(example)}`
}

function choiceText(choices: Readonly<Record<string, string>>): string {
  return Object.entries(choices)
    .map(([word, spoken]) => (word === spoken ? code(word) : `${code(word)} (${spoken})`))
    .join(', ')
}

/** The spoken name of a kind or family. */
export function spokenName(name: string, model: Model): string {
  return model.kinds.get(name)?.spoken ?? model.families.get(name)?.spoken ?? name
}

function neverType(type: never): never {
  throw new TypeError(`no such type: ${String(type)}`)
}
