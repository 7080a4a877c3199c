import { choice, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { pipeType } from '../pipe-type.js'
import type { WrittenOf } from '../written.js'

/** The drain opening that takes the condensate: a floor drain, standpipe, sink or sump. */
export const drainReceptor = kind('drainReceptor', {
  spoken: 'drain receptor',
  place: 'condensate',
  ports: { in: 'condensate' },
  fields: {
    /** What the receptor and the drain behind it are made of. */
    material: pipeType,
    /** Whether the condensate line ends in an open break above the water of the drain. */
    airBreak: yesNo,
    /** What it is. */
    type: choice({
      'floor-drain': 'floor drain',
      standpipe: 'standpipe',
      sink: 'sink',
      sump: 'sump',
      outdoors: 'the ground outdoors',
    }),
    /** Whether a trap keeps sewer air out. */
    trapped: yesNo,
  },
})

/** A drain receptor as written: plain text values. */
export interface DrainReceptorWritten extends WrittenOf<typeof drainReceptor> {}
