import { choice, group, quantity, reference, yesNo } from '../field.js'
import { kind } from '../kind.js'
import { pipeType } from '../pipe-type.js'
import type { WrittenOf } from '../written.js'

/** A relief valve with its discharge pipe. It stands shut in service, so no way joins its inlet to its outlet. */
export const reliefValve = kind('reliefValve', {
  spoken: 'relief valve',
  place: 'relief',
  ports: { inlet: 'eitherWater', outlet: 'discharge' },
  fields: {
    /** What makes it open. */
    type: choice({ pressure: 'pressure relief valve', 'temperature-and-pressure': 'T&P valve' }),
    /** Pressure at which it opens, from its tag; psi, commonly 30 on boilers and 150 on potable tanks. */
    setPressure: quantity('pressure'),
    /** Heat that it can carry off when open, from its tag; Btu/h, above zero. */
    capacity: quantity('heatRate'),
    /** Size of its inlet connection; nominal inches, commonly 3/4 to 2. */
    inletSize: quantity('nominalSize'),
    /** Size of its outlet connection; nominal inches, commonly 3/4 to 2. */
    outletSize: quantity('nominalSize'),
    /** The boiler or tank that it protects. */
    protects: reference(['boiler', 'indirectTank', 'waterHeater'], { countedAs: 'reliefs' }),
    /** The pipe from its outlet to where it spills. */
    discharge: group({
      /** Smallest size along the discharge pipe; nominal inches, commonly 3/4 to 2. */
      size: quantity('nominalSize'),
      /** Height of the open end above the floor, or above the rim of the receptor; inches, zero or more. */
      endHeight: quantity('length'),
      /** How the pipe ends. */
      end: choice({ plain: 'plain end', threaded: 'threaded end', capped: 'capped end', valved: 'end with a valve' }),
      /** Whether anything else discharges into the same pipe. */
      shared: yesNo,
      /** Whether it falls all the way to its end, so that no water stands in it. */
      slopesDown: yesNo,
      /** What the discharge pipe is made of. */
      material: pipeType,
      /** Length of the discharge pipe; feet, zero or more. */
      length: quantity('length'),
      /** Where it spills. */
      into: choice({
        floor: 'in the open above the floor',
        receptor: 'in the open above a drain',
        outdoors: 'outdoors',
        'condensate-line': 'in condensate pipe',
        'closed-pipe': 'in a closed pipe',
      }),
      /** Whether people see it spill. */
      visible: yesNo,
    }),
    /** Whether its tag bears the stamp of the boiler code. */
    stamped: yesNo,
    /** Temperature at which a T&P valve opens; degF, commonly 210. */
    temperatureRating: quantity('temperature'),
    /** Whether it is screwed straight into the tapping of what it protects. */
    inTapping: yesNo,
    /** Day on which it was last made to open; a date. */
    lastLifted: quantity('date'),
  },
})

/** A relief valve as written: plain text values. */
export interface ReliefValveWritten extends WrittenOf<typeof reliefValve> {}
