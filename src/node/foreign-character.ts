import type { Mistake } from './mistake.js'

/** The first character that no text has: the file is no text, or its lines end as no reader of today expects. */
export function foreignCharacter(text: string): Mistake | undefined {
  const found = foreign.exec(text)
  if (found === null) return undefined
  if (found[0] === '\r')
    return {
      code: 'line-end',
      at: found.index,
      message: 'This line ends with a carriage return alone: save the file with common line ends.',
    }
  const name = `U+${found[0].charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`
  return {
    code: 'not-text',
    at: found.index,
    message: `The control character ${name} stands here: this is no text file.`,
  }
}

// JSON allows the controls from U+007F on inside its texts.
const foreign = /\r(?!\n)|(?![\t\n\r\u007f-\u009f])\p{Cc}/u
