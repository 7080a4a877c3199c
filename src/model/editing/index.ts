export { applyEdits } from './apply-edits.js'
export { forgettable } from './forgettable.js'
export type { Edit, Edited, ForgetEdit, InsertEdit, RemoveEdit, SetEdit } from './edit.js'
export type { PlainMap } from './plain.js'
