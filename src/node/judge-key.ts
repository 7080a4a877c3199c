import { isAlias, isMap, type YAMLMap } from 'yaml'
import { excerpt, type Wrong } from './mistake.js'
import { sourceOf, textOf, wayOfWriting } from './node-text.js'

/** What is wrong with a key in itself. References are refused elsewhere. */
export function judgeKey(key: unknown, map: YAMLMap, text: string): Wrong | undefined {
  const name = textOf(key)
  if (name === undefined) return isAlias(key) ? undefined : { code: 'key-not-text', message: notText(key) }
  if (names.has(name)) return { code: 'reserved-key', message: `"${name}" cannot be a key.` }
  if (wayOfWriting(key) !== 'plain') return undefined
  if (name === '') return { code: 'key-not-text', message: 'The key is missing before this colon.' }
  if (name === '<<') return { code: 'merge-key', message: 'The merge key "<<" is refused: write each value out.' }
  if (sourceOf(key, text).includes('\n'))
    return {
      code: 'runs-on',
      message: 'This key runs on into the next line: put the comma between them, and write comments with "#".',
    }
  return /^\d/.test(name) ? { code: 'digit-key', message: digitFirst(name, map) } : undefined
}

/** What is wrong where a key has no value at all, not even a colon. */
export function keyAlone(name: string, map: YAMLMap): Wrong {
  return { code: 'key-without-value', message: `"${excerpt(name)}" stands without a value: ${mendAlone(name, map)}` }
}

// Names that mean something else to every JavaScript object.
const names: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype'])

function mendAlone(name: string, map: YAMLMap): string {
  if (/^[A-Za-z][\w-]*:\S/.test(name)) return 'write a space after the colon.'
  if (map.flow !== true) return `write "${excerpt(name)}: unknown".`
  if (map.items.length === 1)
    return `write "${excerpt(name)}: unknown"; a text that begins with a brace is written in quotes.`
  return 'quote it, or drop the comma.'
}

function digitFirst(name: string, map: YAMLMap): string {
  return `The key "${excerpt(name)}" begins with a digit: quote it${map.flow === true ? ', or drop the comma' : ''}.`
}

function notText(key: unknown): string {
  const kind = isMap(key) ? 'a map' : 'a list'
  return `A key is a text, and this is ${kind}: a text that begins with a brace or bracket is written in quotes.`
}
