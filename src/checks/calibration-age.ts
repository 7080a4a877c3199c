import { boundsOf, fact, rebound, type Missing } from '../facts/index.js'
import { quantity, reading } from '../model/index.js'
import { secondsPerDay } from '../units/index.js'

/** Time from the last calibration of the instrument to the day on which it was read. */
export const calibrationAge = fact('calibrationAge', {
  of: reading,
  type: quantity('time'),
  read: ({ subject, ask }) => {
    const [read, calibrated] = [ask('at'), ask('instrumentCalibratedOn')]
    const [day, since] = [boundsOf(read), boundsOf(calibrated)]
    const low = (day.low - since.high) * secondsPerDay
    const high = (day.high - since.low) * secondsPerDay
    const age = rebound([read, calibrated], low, high)
    const months: readonly Missing[] =
      low === high || age.missing.length > 0 ? [] : [{ subject: subject.id, fact: 'instrumentCalibratedOn' }]
    return { ...age, missing: [...age.missing, ...months] }
  },
})
