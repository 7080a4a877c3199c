import { fact, unknown, word } from '../facts/index.js'
import { choice, line, media } from '../model/index.js'

/** The medium of a line, so that rules can speak of condensate or gas lines only. */
export const lineCarries = fact('carries', {
  of: line,
  type: choice(Object.fromEntries(media.map((medium) => [medium, medium]))),
  read: ({ subject }) =>
    subject.medium === undefined
      ? unknown({ missing: [{ subject: subject.id, fact: 'medium' }] })
      : word(subject.medium),
})
