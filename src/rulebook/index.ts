export { both, either, opposite, type Tri } from './truth.js'
export { isBinding, isWorse, severities, worstOf, type Ground, type Nature, type Severity } from './severity.js'
export { compare, operators, spokenOperators, type Operator } from './operators.js'
export {
  allLeaves,
  factsOf,
  judgeCondition,
  leavesIn,
  openLeaves,
  type Condition,
  type Judged,
  type JudgedLeaf,
  type Leaf,
} from './condition.js'
export { valueOf, type Value } from './value.js'
export { readCondition } from './read-condition.js'
export { valueReading } from './read-rule.js'
export type { Authority, Demand, Effective, Exemption, Rule } from './rule.js'
export type { BasisData, DemandData, OverlayData, RuleData, SourceData } from './rule-data.js'
export {
  overlayShape,
  ruleShape,
  sourceShape,
  addChangeShape,
  demandChangeShape,
  exemptChangeShape,
} from './rule-shape.js'
export { checkShape } from './check-shape.js'
export { placeholdersIn, plainPlaceholders } from './placeholders.js'
export { defineCheck, definePlugin, type Plugin } from './plugin.js'
export type { Rulebook } from './rulebook.js'
export {
  openRulebook,
  tryOpenRulebook,
  UnusableRulebook,
  type NamedData,
  type RulebookParts,
  type RulebookRead,
} from './open-rulebook.js'
export { digestOf } from './digest.js'
