import { unknown, word, type Answer, type Context, type FactHandle } from '../facts/index.js'
import { indirectTank, reliefValve, waterHeater, type KindSpec, type Thing } from '../model/index.js'
import { reachesWithout, type Barriers, type NetworkAnswer, type Told } from '../network/index.js'
import { defineCheck } from '../rulebook/index.js'
import { isPipeOrFitting } from './of-kind.js'
import { blockedAt } from './blocked-at.js'

/** Where the T&P valve of the tank stands: `in-tapping` with nothing but fittings between, `free` of anything that closes but farther off, `blocked`, or `absent`. */
export const tankTemperatureRelief = temperatureReliefOf(indirectTank)

/** Where the T&P valve of the heater stands: `in-tapping` with nothing but fittings between, `free` of anything that closes but farther off, `blocked`, or `absent`. */
export const heaterTemperatureRelief = temperatureReliefOf(waterHeater)

function temperatureReliefOf(of: KindSpec): FactHandle {
  return defineCheck('temperatureRelief', {
    of,
    answers: ['in-tapping', 'free', 'blocked', 'absent'],
    answerable: true,
    judge,
  })
}

function judge(context: Context): Answer {
  const { subject } = context
  const things = (thing: Thing): boolean => thing.id !== subject.id && !isPipeOrFitting(thing)
  const near = wayToValve(context, { ...free, things })
  if (near.truth === 1) return word('in-tapping', { witness: near.witness })
  const far = wayToValve(context, free)
  if (near.truth === -1 && far.truth === 1) return word('free', { witness: far.witness, ...blockedAt(near) })
  const any = wayToValve(context, {})
  if (any.truth === -1) return word('absent', { witness: any.witness })
  if (far.truth === -1 && any.truth === 1) return word('blocked', { witness: any.witness, ...blockedAt(far) })
  const deciding = [near, far, any].find(({ truth }) => truth === 0) ?? any
  return unknown({ witness: deciding.witness, missing: deciding.missing })
}

const free = { closing: true, checking: true, restricting: true } as const

/** The valve has to be reached in drinking water; it does nothing for the tank through a coil. */
function wayToValve({ subject, network, ask, listed }: Context, barriers: Barriers): NetworkAnswer {
  const isValve = (thing: Thing, port: string): Told => {
    if (thing.kind.name !== reliefValve.name || port !== 'inlet') return false
    const type = ask('type', thing)
    return type.state === 'word' ? type.word === 'temperature-and-pressure' : { subject: thing.id, fact: 'type' }
  }
  const from = { component: subject.id, medium: 'potableHot' } as const
  return reachesWithout(network, from, isValve, {
    ...barriers,
    crossing: true,
    allListed: listed(reliefValve).more === 0,
  })
}
