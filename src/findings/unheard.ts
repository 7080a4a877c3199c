import type { Installation } from '../model/index.js'
import type { Rulebook } from '../rulebook/index.js'
import type { Unheard } from './report.js'

/** Authorities that have a say and were not heard. Nobody named is a question of its own. */
export function unheardIn(installation: Installation, rulebook: Rulebook): readonly Unheard[] {
  const entry = installation.things.get('jurisdiction')?.entries.authorities
  const list = entry?.value.type === 'list' && entry.standing === 'stated' ? entry.value : undefined
  if (list === undefined)
    return [
      {
        message:
          'No authority is stated: nobody knows yet what this town accepts. Write jurisdiction: { authorities: [...] }; [] says that only the model codes count.',
      },
    ]
  const opened = rulebook.overlays.map((overlay) => overlay.id)
  const silent = list.members.filter((name) => !opened.includes(name))
  return [
    ...silent.map((authority) => ({
      authority,
      message: `${authority} is named, but no overlay of that name was opened: its demands were not heard.`,
    })),
    ...(list.complete ? [] : [{ message: 'More authorities may have a say than are named.' }]),
  ]
}
