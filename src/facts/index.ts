export {
  between,
  boundsOf,
  isSettled,
  known,
  list,
  unknown,
  word,
  type Answer,
  type Missing,
  type Trail,
  type TurningPoint,
} from './answer.js'
export { atLeastZero, largestOf, rebound, smallestOf, sumOf, timesOf } from './arithmetic.js'
export { fact, type Context, type FactHandle, type FactType, type Listing } from './fact.js'
export { defineCatalogue, factNames, typeOf, type Catalogue } from './catalogue.js'
export { resolveFact, type Resolution, type ResolvedFact } from './resolve-fact.js'
export { gatherFacts, type Facts } from './gather.js'
export { askFact, contextIn } from './ask.js'
export { moreOf, moreParts } from './listing.js'
export { openView, type View } from './view.js'
