import { choice, listOf, quantity, text } from '../field.js'
import { kind } from '../kind.js'
import type { ItemWritten } from '../written.js'

/** A picture or paper that backs what the document says. */
export const evidence = kind('evidence', {
  spoken: 'evidence',
  section: 'evidence',
  place: 'papers',
  fields: {
    /** What it is. */
    type: choice({ photo: 'photo', scan: 'scan', slip: 'printed slip', letter: 'letter', sketch: 'sketch' }),
    /** What it shows, in a few words. */
    caption: text,
    /** Day on which it was taken or written; a date. */
    takenAt: quantity('date'),
    /** Ids of the things that it shows. */
    shows: listOf(text),
    /** Digest of the file, by which it is recognized. */
    digest: text,
  },
})

/** An evidence as written: plain text values. */
export interface EvidenceWritten extends ItemWritten<typeof evidence> {}
