import { unknown, type Answer, type Context } from '../facts/index.js'

/** A question to one of the sections that a document has once. */
export function askOnce({ find, ask }: Context, section: { readonly name: string }, fact: string): Answer {
  const thing = find(section.name)
  return thing === undefined ? unknown({ missing: [{ subject: section.name, fact }] }) : ask(fact, thing)
}
