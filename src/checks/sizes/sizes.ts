import type { UnitSystem } from '../../units/index.js'
import type { SizeLine } from './size-line.js'
import type { SizeTopic } from './size-topics.js'

/** The numbers that a job needs, topic by topic, as plain data. */
export interface Sizes {
  readonly advisory: string
  readonly name?: string
  /** How the document is to be printed; every value is in SI. */
  readonly units: UnitSystem
  readonly topics: readonly TopicSizes[]
}

/** Every line of one topic. */
export interface TopicSizes {
  readonly topic: SizeTopic
  readonly lines: readonly SizeLine[]
}
