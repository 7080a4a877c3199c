import { boundsOf, unknown, type Answer, type Context, type Missing } from '../facts/index.js'
import { heatingFluid } from '../model/index.js'
import { densestMixture, glycolDensity, waterDensity, type Glycol } from '../sizing/index.js'
import { si } from '../units/index.js'

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
export function fluidDensity({ find, ask }: Context): FluidDensity {
  const fluid = find(heatingFluid.name)
  const told = (name: string): Answer =>
    fluid === undefined ? unknown({ missing: [{ subject: heatingFluid.name, fact: name }] }) : ask(name, fluid)
  const antifreeze = told('antifreeze')
  if (antifreeze.state !== 'word')
    return { low: lightest, high: Infinity, spoken: 'unknown fluid', missing: antifreeze.missing }
  if (antifreeze.word === 'no-antifreeze') return { low: cold, high: cold, spoken: 'water', missing: [] }
  if (!isGlycol(antifreeze.word))
    return { low: cold, high: Infinity, spoken: 'antifreeze not listed', missing: [whichAntifreeze] }
  return mixture(antifreeze.word, told('concentration'))
}

const whichAntifreeze: Missing = { subject: heatingFluid.name, fact: 'antifreeze' }
const howStrong: Missing = { subject: heatingFluid.name, fact: 'concentration' }
const glycols: readonly Glycol[] = ['propylene-glycol', 'ethylene-glycol']

function isGlycol(word: string): word is Glycol {
  return glycols.some((glycol) => glycol === word)
}

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
