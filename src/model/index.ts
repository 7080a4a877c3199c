export type { QuantityName } from '../units/index.js'
export { printProblem, pointerOf, type Problem } from './problem.js'
export {
  choice,
  group,
  leavesOf,
  listOf,
  quantity,
  reference,
  text,
  yesNo,
  type ChoiceField,
  type Field,
  type Fields,
  type GroupField,
  type LeafField,
  type ListField,
  type QuantityField,
  type ReferenceField,
  type TextField,
} from './field.js'
export {
  family,
  kind,
  places,
  type Closing,
  type FamilySpec,
  type KindSpec,
  type Medium,
  type Place,
  type Section,
  type Way,
} from './kind.js'
export {
  standings,
  waysOfKnowing,
  type Entry,
  type EntryValue,
  type ListValue,
  type Standing,
  type WayOfKnowing,
} from './entry.js'
export type { PartList, PathItem, Thing } from './thing.js'
export type { ApprovedModification, Contradiction, Installation } from './installation.js'
export { isDue, phases, type Phase } from './phase.js'
export { defineModel, type AnswerField, type InverseReference, type Model } from './model.js'
export { everyComponent, everyLine, fieldsOfEvery } from './every-thing.js'
export type * from './written.js'
export * from './reading/index.js'
export { groupsMeeting, media, mediumGroup, portsOf, type Ports } from './ports.js'
export { countListed, type Listed } from './count-listed.js'
export { restrict, type Keep } from './restrict.js'
export {
  applyEdits,
  forgettable,
  type Edit,
  type Edited,
  type ForgetEdit,
  type InsertEdit,
  type PlainMap,
  type RemoveEdit,
  type SetEdit,
} from './editing/index.js'
export * from './kinds/index.js'
