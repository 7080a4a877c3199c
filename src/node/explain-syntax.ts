import { excerpt, type Wrong } from './mistake.js'

/** A place that is no YAML, as the parser tells it. */
export interface Fault {
  readonly code: string
  readonly message: string
  readonly pos: readonly [number, number]
}

/** A fault of the parser in words for people who write installations, with the mend. */
export function explainSyntax(fault: Fault, text: string): Wrong {
  const [at] = fault.pos
  switch (fault.code) {
    case 'TAB_AS_INDENT':
      return { code: 'tab-indent', message: 'A tab stands at the beginning of this line: indent with spaces.' }
    case 'MULTILINE_IMPLICIT_KEY':
      return { code: 'runs-on', message: runsOn(text.slice(at, at + 100)) }
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'BLOCK_IN_FLOW':
      return inText(text.slice(at, at + 2))
    case 'BAD_SCALAR_START':
      return { code: 'unquoted-start', message: `A text that begins with "${text.charAt(at)}" is written in quotes.` }
    case 'BAD_DQ_ESCAPE':
      return {
        code: 'unknown-escape',
        message:
          'In double quotes a backslash changes the next letter, and this one is not known: write "\\\\" for a backslash, or use single quotes.',
      }
    case 'KEY_OVER_1024_CHARS':
      return { code: 'key-too-long', message: 'A key has at most 1024 characters.' }
    case 'BAD_INDENT':
    case 'MISSING_CHAR':
      return missing(fault, text.charAt(at))
    case 'UNEXPECTED_TOKEN':
      return unexpected(fault, text)
    default:
      return unexplained(fault)
  }
}

function runsOn(beginning: string): string {
  if (/^[A-Za-z][\w-]*:\S/.test(beginning)) return 'This line runs on into the next: write a space after the colon.'
  if (beginning.startsWith('- ')) return 'A list item stands among keys: give the list a key of its own, or indent it.'
  return 'This text runs on into the next line, where a key stands: put the comma between them, or begin the key in the column of its neighbors.'
}

function inText(beginning: string): Wrong {
  if (/^[-?]\s/.test(beginning)) return listInText(beginning.charAt(0))
  return {
    code: 'unquoted-colon',
    message: 'Text with ": " in it is written in quotes; a new key needs a comma or a line of its own.',
  }
}

function listInText(mark: string): Wrong {
  return {
    code: 'unquoted-start',
    message: `A text that begins with "${mark} " is written in quotes; a list begins on the next line, or stands in brackets.`,
  }
}

function missing(fault: Fault, here: string): Wrong {
  if (fault.message.includes('quote'))
    return {
      code: 'unclosed-quote',
      message: 'This quote is not closed; a text that begins with a quote mark is itself written in quotes.',
    }
  if (fault.message.includes('end with a'))
    return { code: 'unclosed', message: `This bracket is not closed with "${fault.message.slice(-1)}".` }
  if (fault.message.includes('followed by map values'))
    return {
      code: 'key-without-value',
      message: 'A colon is missing here; a line that belongs to the text above is indented further than its key.',
    }
  if (fault.code === 'BAD_INDENT')
    return { code: 'indentation', message: 'This line does not begin in the column of its neighbors.' }
  if (fault.message.startsWith('Missing ,'))
    return {
      code: 'missing-comma',
      message: `A comma is missing before "${here}"; a text that begins with a brace is written in quotes.`,
    }
  return unexplained(fault)
}

function unexpected(fault: Fault, text: string): Wrong {
  const [at] = fault.pos
  const here = text.charAt(at)
  if (fault.message.includes('node end')) return afterEnd(text.slice(Math.max(0, at - 100), at))
  if (fault.message.includes('block-seq-ind')) return listInText('-')
  if (here === '}' || here === ']')
    return {
      code: 'stray-bracket',
      message: `This "${here}" closes nothing; a text with brackets or braces is written in quotes.`,
    }
  return unexplained(fault)
}

function afterEnd(before: string): Wrong {
  if (/[}\]][ \t]*$/.test(before))
    return {
      code: 'unquoted-brace',
      message:
        'More text stands after the closing brace or bracket: a text that begins with a brace or bracket is written in quotes.',
    }
  if (/["'][ \t]*$/.test(before))
    return {
      code: 'text-after-quote',
      message:
        'More text stands after the closing quote: put the whole text in quotes, of the other kind if it has quotes in it.',
    }
  return {
    code: 'indentation',
    message:
      'This line belongs to nothing above it: begin it in the column of its neighbors, and write a space after a dash.',
  }
}

function unexplained(fault: Fault): Wrong {
  return { code: 'not-yaml', message: `This is not YAML: ${excerpt(fault.message)}.` }
}
