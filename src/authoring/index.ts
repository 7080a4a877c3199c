export { lintRuleSet, readSources, type RuleSetFiles, type SourcesRead } from './linting/index.js'
export {
  judgeExample,
  judgeGiven,
  neighborsOf,
  printExpected,
  readExamples,
  runExamples,
  type Example,
  type ExampleRun,
  type ExampleVerdict,
  type ExpectedVerdict,
  type FactsExample,
  type FragmentExample,
  type Fragments,
  type Neighbor,
  type WrittenRule,
} from './examples/index.js'
export { builtInMeanings, meaningOf, type Meanings } from './meanings.js'
export { packRules, ruleIdOf, type PackedRules, type RuleFiles } from './pack-rules.js'
export { conditionWords, valueWords, writePages, type PageSources } from './pages/index.js'
export { placeProblems, type Located, type Position, type Positions } from './positions.js'
export { jsonSchemas, type JsonSchema } from './schema/index.js'
