import type { Severity } from '../rulebook/index.js'

/** What a part of a page is about; printers that have color give each tone its own, and every tone has a word beside it. */
export type Tone = Severity | 'open' | 'clear' | 'caution' | 'plain'

/** One labelled line under an item: `Found`, `Why`, `CAUTION`. */
export interface Row {
  readonly label: string
  readonly text: string
  readonly tone?: Tone
}

/** One thing to read: where it is, what it is called, a sentence, and what belongs to it. */
export interface Item {
  readonly head?: string
  /** Name to look it up by, at the end of the head. */
  readonly aside?: string
  readonly text?: string
  readonly rows: readonly Row[]
}

/** A titled part of a page. */
export interface Section {
  readonly heading: string
  readonly tone: Tone
  readonly note?: string
  /** Whether its items carry numbers, which run on through the page. */
  readonly numbered: boolean
  readonly items: readonly Item[]
}

/** A page, before anybody decides how pages look. */
export interface Sheet {
  readonly title: string
  readonly about?: string
  readonly headline?: { readonly text: string; readonly tone: Tone }
  readonly caution?: string
  readonly sections: readonly Section[]
  readonly advisory?: string
}
