import type { Wrong } from './mistake.js'
import { sourceOf, textOf, wayOfWriting } from './node-text.js'

/** What is wrong with a text that stands as a value: nothing in it, a word for nothing, or a list taken for its second line. */
export function judgeText(node: unknown, text: string): Wrong | undefined {
  const value = textOf(node) ?? ''
  const way = wayOfWriting(node)
  if (value === '' && way !== 'quoted')
    return { code: 'empty-value', message: 'A value is missing here: write "unknown".' }
  if (way !== 'plain') return undefined
  if (nothing.test(value))
    return { code: 'empty-value', message: `"${value}" is no value: write "unknown".`, nearest: 'unknown' }
  if (!/\n[ \t]*- /.test(sourceOf(node, text))) return undefined
  return {
    code: 'runs-on',
    message:
      'This text runs on into a line that begins with a dash: give the list a key of its own, or put the text in quotes.',
  }
}

const nothing = /^(~|null|Null|NULL)$/
