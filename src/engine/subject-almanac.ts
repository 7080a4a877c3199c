import { Almanac, type Fact } from 'json-rules-engine'
import { resolveFact, type Facts } from '../facts/index.js'
import type { Thing } from '../model/index.js'
import { exactValue } from './exact-value.js'

interface SubjectPlace {
  readonly facts: Facts
  readonly subject: Thing
  /** As facts name the subject: its kind, or a family. */
  readonly of: string
  readonly hostFacts: Iterable<Fact>
}

/** What a host's rules, facts and listeners may ask about one thing: what is stated, as `stop` and `must` are judged. */
export class SubjectAlmanac extends Almanac {
  readonly #facts: Facts
  readonly #subject: Thing
  readonly #of: string
  readonly #hostFacts: ReadonlySet<string>

  constructor({ facts, subject, of, hostFacts }: SubjectPlace) {
    super({ pathResolver: refusePath })
    const own = [...hostFacts]
    this.#facts = facts
    this.#subject = subject
    this.#of = of
    this.#hostFacts = new Set(own.map((fact) => fact.id))
    for (const fact of own) this.addFact(fact)
  }

  /** A number in SI, a word or a list of words; undefined where it is not known exactly. */
  override factValue<T>(name: string, params?: Record<string, unknown>, path?: string): Promise<T> {
    if (path !== undefined && path !== '')
      return Promise.reject(new TypeError(`"${name}" is asked by its own name, without a path`))
    if (this.#hostFacts.has(name)) return super.factValue<T>(name, params)
    try {
      return Promise.resolve(this.#ask(name) as T)
    } catch (reason) {
      return Promise.reject(reason instanceof Error ? reason : new TypeError(String(reason)))
    }
  }

  #ask(name: string): unknown {
    const found = resolveFact(this.#facts.catalogue, this.#of, name)
    if (!found.ok)
      throw new TypeError(
        found.nearest === undefined ? found.message : `${found.message} Did you mean "${found.nearest}"?`,
      )
    return exactValue(found.fact.ask(this.#facts.strict, this.#subject))
  }
}

function refusePath(): never {
  throw new TypeError('no path is ever followed')
}
