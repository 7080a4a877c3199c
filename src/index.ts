export { checkInstallation, prepareCheck, type CheckOptions } from './check-installation.js'
export { advisory, writeReport, type AcceptedFinding, type BasisTold, type DemandTold, type Evidence, type Finding, type MissingFact, type Outcome, type OverlayTold, type PassedVerdict, type Report, type ReportOptions, type Unheard } from './findings/index.js'
export { judge, judgeRule, type DemandVerdict, type JudgedDemand, type Verdict } from './judging/index.js'
export { defineCheck, definePlugin, openRulebook, tryOpenRulebook, UnusableRulebook, type Authority, type BasisData, type Condition, type Demand, type Ground, type Nature, type Plugin, type Rule, type Rulebook, type RulebookParts, type Severity, type SourceData } from './rulebook/index.js'
export { between, fact, gatherFacts, known, list, unknown, word, type Answer, type Context, type FactHandle, type Facts, type Listing, type Missing } from './facts/index.js'
export {
  applyEdits, choice, defineModel, family, forgettable, group, kind, listOf, quantity, readInstallation, reference, text, tryReadInstallation, UnreadableInstallation, yesNo,
  type Edit, type Edited, type Entry, type FamilySpec, type Installation, type InstallationRead, type InstallationWritten, type KindSpec, type Model, type Phase, type Problem, type Thing,
} from './model/index.js'
export { parseQuantity, printQuantity, type QuantityName, type SI } from './units/index.js'
