import { UnusableHostContent } from './unusable-host-content.js'

/**
 * Refuses an instance that was made by another copy of json-rules-engine: the engine would take it for a plain value and
 * rebuild something else from it.
 *
 * @throws UnusableHostContent
 */
export function refuseForeign(given: unknown, own: abstract new (...words: never[]) => object): void {
  if (typeof given !== 'object' || given === null || given instanceof own || isPlain(given)) return
  throw new UnusableHostContent([
    {
      code: 'foreign-instance',
      pointer: '',
      message: `This ${own.name} was made by another copy of json-rules-engine. Import ${own.name} from "hydronic-rulebook/engine", or hand over a plain value.`,
    },
  ])
}

/** Whether an object was written out, not made by a class. */
export function isPlain(given: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(given)
  return prototype === null || prototype === Object.prototype || Object.getPrototypeOf(prototype) === null
}
