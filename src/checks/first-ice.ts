import { known, unknown, type Answer, type Context } from '../facts/index.js'
import { freezingTemperature } from '../sizing/index.js'
import { si } from '../units/index.js'
import { glycolNamed } from './glycol-named.js'

/** Temperature at which ice begins to form in the heating fluid: by its maker, or by what is in it. */
export function firstIce({ ask }: Context): Answer {
  const byMaker = ask('freezePoint')
  if (byMaker.state === 'number') return byMaker
  const antifreeze = ask('antifreeze')
  if (antifreeze.state !== 'word') return unknown({ missing: antifreeze.missing })
  if (antifreeze.word === 'no-antifreeze') return known(si('temperature', '32 F'))
  const glycol = glycolNamed(antifreeze.word)
  const strength = ask('concentration')
  if (glycol === undefined) return unknown({ missing: byMaker.missing })
  if (strength.state !== 'number' || strength.low !== strength.high) return unknown({ missing: strength.missing })
  const ice = freezingTemperature({ glycol, volumeFraction: strength.low })
  return ice.sized && ice.valid ? known(ice.value) : unknown({ missing: byMaker.missing })
}
