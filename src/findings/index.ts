export { advisory } from './advisory.js'
export { packageName } from './package-name.js'
export { speak } from './print-answer.js'
export { spokenGrounds } from './tell-basis.js'
export { tellEvidence } from './tell-evidence.js'
export { writeReport, type Judgement } from './write-report.js'
export type {
  AcceptedFinding,
  BasisTold,
  DemandTold,
  Evidence,
  Finding,
  MissingFact,
  Outcome,
  OverlayTold,
  PassedVerdict,
  Report,
  ReportOptions,
  Unheard,
} from './report.js'
