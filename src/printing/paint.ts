import type { Tone } from './sheet.js'

/** How a caller colors a text. Whatever is colored says the same in words. */
export type Paint = Readonly<Record<Tone | 'heading' | 'faint', (text: string) => string>>

const same = (text: string): string => text

/** No color at all, as pipes and files want it. */
export const plainPaint: Paint = {
  stop: same,
  must: same,
  should: same,
  advice: same,
  open: same,
  clear: same,
  caution: same,
  plain: same,
  heading: same,
  faint: same,
}
