import type { TurningPoint } from '../facts/index.js'
import type { Blocking, NetworkAnswer } from '../network/index.js'

/** Where a way is blocked and by what, for an answer that says so; nothing where no way is drawn at all. */
export function blockedAt({ blockedBy, blockedHow }: NetworkAnswer): { readonly turningPoint?: TurningPoint } {
  if (blockedBy === undefined) return {}
  const because = blockedHow === undefined ? undefined : spoken[blockedHow]
  return { turningPoint: { at: blockedBy, ...(because === undefined ? {} : { because }) } }
}

const spoken: Readonly<Record<Blocking, string>> = {
  closes: 'it can be shut',
  checks: 'it lets through one way only',
  restricts: 'it strains or reduces',
  crosses: 'it leads into other water',
  barred: 'it stands in between',
}
