import { kind } from '../kind.js'

/** The document as a whole: rules that speak of everything together have it as their subject. It has no fields of its own. */
export const installation = kind('installation', {
  spoken: 'installation',
  section: 'singleton',
  place: 'papers',
  fields: {},
})
