import type { Context, Missing } from '../facts/index.js'
import { fixtureOutlet, type Thing } from '../model/index.js'
import { uncounted } from './uncounted.js'

interface Outlets {
  /** Outlets that surely are those of the fixture. */
  readonly sure: readonly Thing[]
  /** What would tell whether there are more. */
  readonly missing: readonly Missing[]
}

/** The outlets at which a fixture takes its hot water. */
export function outletsOf({ subject, ask, listed }: Context): Outlets {
  const { things, more } = listed(fixtureOutlet)
  const asked = things.map((outlet) => ({ outlet, fixture: ask('fixture', outlet) }))
  const sure = asked.filter(({ fixture }) => fixture.state === 'word' && fixture.word === subject.id)
  return {
    sure: sure.map(({ outlet }) => outlet),
    missing: [...asked.flatMap(({ fixture }) => fixture.missing), ...uncounted(fixtureOutlet, more)],
  }
}
