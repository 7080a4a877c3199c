import type { Installation } from '../model/index.js'
import type { Authority } from '../rulebook/index.js'
import { isMore, parseQuantity } from '../units/index.js'
import type { OverlayTold } from './report.js'

/** An opened overlay for the foot of a report: who wrote it, whether the document names it, whether it has gone stale. */
export function tellOverlay(overlay: Authority, installation: Installation, judgedOn: string | undefined): OverlayTold {
  const entry = installation.things.get('jurisdiction')?.entries.authorities
  const { id, name, layer, official, writtenBy, reviewedBy, lastVerified } = overlay
  return {
    id,
    name,
    layer,
    official,
    ...(writtenBy === undefined ? {} : { writtenBy }),
    ...(reviewedBy === undefined ? {} : { reviewedBy }),
    ...(lastVerified === undefined ? {} : { lastVerified }),
    ...(isStale(lastVerified, judgedOn) ? { stale: true } : {}),
    named: entry?.value.type === 'list' && entry.value.members.includes(id),
  }
}

const twoYears = 730.5

function isStale(lastVerified: string | undefined, judgedOn: string | undefined): boolean {
  const [verified, today] = [lastVerified, judgedOn].map((day) =>
    day === undefined ? undefined : parseQuantity(day, 'date'),
  )
  return verified?.ok === true && today?.ok === true && isMore(today.low - verified.high, twoYears)
}
