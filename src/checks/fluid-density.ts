import { boundsOf, type Answer, type Context, type Missing } from '../facts/index.js'
import { heatingFluid } from '../model/index.js'
import { densestMixture, glycolDensity, waterDensity, type Glycol } from '../sizing/index.js'
import { si } from '../units/index.js'
import { askOnce } from './ask-once.js'
import { glycolNamed, glycols } from './glycol-named.js'

/** Between what the heating fluid weighs when cold, in kg/m3, and what would tell more. */
export interface FluidDensity {
  readonly low: number
  readonly high: number
  /** The fluid in words. */
  readonly spoken: string
  readonly missing: readonly Missing[]
}

/** Temperature of water as it is filled in; K. Common practice. */
const filling = si('temperature', '50 F')
const cold = waterDensity(filling).value

/**
 * Density of the heating fluid as it is filled in.
 *
 * Antifreeze that is not listed, and fluid of which nothing is said, may be any heavier than water. Lighter antifreeze on
 * alcohol has no place in a heating system and is not reckoned with.
 */
export function fluidDensity(context: Context): FluidDensity {
  const antifreeze = askOnce(context, heatingFluid, 'antifreeze')
  if (antifreeze.state !== 'word')
    return { low: lightest, high: Infinity, spoken: 'unknown fluid', missing: antifreeze.missing }
  if (antifreeze.word === 'no-antifreeze') return { low: cold, high: cold, spoken: 'water', missing: [] }
  const glycol = glycolNamed(antifreeze.word)
  if (glycol === undefined)
    return { low: cold, high: Infinity, spoken: 'antifreeze not listed', missing: [whichAntifreeze] }
  return mixture(glycol, askOnce(context, heatingFluid, 'concentration'))
}

const whichAntifreeze: Missing = { subject: heatingFluid.name, fact: 'antifreeze' }
const howStrong: Missing = { subject: heatingFluid.name, fact: 'concentration' }

function mixture(glycol: Glycol, concentration: Answer): FluidDensity {
  const { low, high } = boundsOf(concentration)
  const [weak, strong] = [densityAt(glycol, low), densityAt(glycol, high)]
  return {
    low: weak ?? lightestWith(glycol),
    high: strong ?? densestMixture[glycol],
    spoken: `${glycol} in water`,
    missing: weak === undefined || strong === undefined || low !== high ? [howStrong] : [],
  }
}

/** Density at a strength for which it is published; between those it grows with the strength. */
function densityAt(glycol: Glycol, volumeFraction: number): number | undefined {
  const { value, valid } = glycolDensity({ glycol, volumeFraction, temperature: filling })
  return valid ? value : undefined
}

/** The published mixtures do not meet water exactly, so the lighter of the two is the bound. */
function lightestWith(glycol: Glycol): number {
  return Math.min(cold, glycolDensity({ glycol, volumeFraction: 0, temperature: filling }).value)
}

const lightest = Math.min(...glycols.map(lightestWith))
