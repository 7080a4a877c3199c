import type { Problem } from '../problem.js'
import type { PlainMap } from './plain.js'

/**
 * Says a value: `RV1.setPressure`, `VT1/window-east.distance`, `site.snowLine`, `L-main.pipe.size`, `state heating.open`,
 * `complete.boiler`, `phase`. What was said there before goes, its evidence included.
 */
export interface SetEdit {
  readonly set: string
  /** A value as the document writes it, short or long. */
  readonly to: unknown
}

/** Takes a thing out of the house: counts follow, and a line closes over it or, where it was the end, goes along. */
export interface RemoveEdit {
  readonly remove: string
}

/** Adds a thing to the house: counts follow. */
export interface InsertEdit {
  /** The thing as the document writes it. */
  readonly insert: unknown
  /** Id of the line whose path it joins, next to the item named by `after` or `before`. */
  readonly in?: string
  readonly after?: string
  readonly before?: string
  /** How the path passes it where that is not its through-way: `CV1.out-in`. */
  readonly as?: string
  /** Where it is written, for a thing without kind: `spaces`; for a part, its owner's list: `VT1.openings`. */
  readonly section?: string
}

/** Says less and leaves the house as it is: a value, thing, part, line, state, section or count is no longer said. */
export interface ForgetEdit {
  readonly forget: string
}

/** One change of a document. The first three change the house, the last what is said about it. */
export type Edit = SetEdit | RemoveEdit | InsertEdit | ForgetEdit

/** The document after all edits, or everything that stood in their way. */
export type Edited =
  { readonly ok: true; readonly document: PlainMap } | { readonly ok: false; readonly problems: readonly Problem[] }
