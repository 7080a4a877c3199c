import type { Model } from '../model.js'

/** Keys of the document that no kind declares and that list no things. */
export const frameKeys = ['installation', 'name', 'phase', 'units', 'none', 'complete', 'kept', 'approved'] as const

export function isFrameKey(word: string): boolean {
  return frameKeys.some((key) => key === word)
}

/** Names that `complete` may count. */
export function knownCounts(model: Model): readonly string[] {
  return ['all', 'states', ...model.kindsIn.keys()]
}
