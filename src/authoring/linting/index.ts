export { lintRuleSet, type RuleSetFiles } from './lint-rule-set.js'
export { readSources, type SourcesRead } from './lint-files.js'
