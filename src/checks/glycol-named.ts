import type { Glycol } from '../sizing/index.js'

/** The glycol that a choice of antifreeze stands for; undefined for none and for what is not listed. */
export function glycolNamed(antifreeze: string): Glycol | undefined {
  return glycols.find((glycol) => glycol === antifreeze)
}

/** Glycols that fill heating systems. */
export const glycols: readonly Glycol[] = ['propylene-glycol', 'ethylene-glycol']
