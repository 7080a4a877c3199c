export { flowShare, leastFlow, velocity } from './flow-facts.js'
export { hydraulicsOf, type Hydraulics } from './hydraulics-of.js'
export type { StateFlows } from './state-flows.js'
