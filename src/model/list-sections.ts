/** Sections of the document that list things of the house. */
export const thingSections = [
  'components',
  'lines',
  'zones',
  'spaces',
  'fixtures',
  'states',
  'readings',
  'tests',
  'evidence',
] as const

/** A section that lists things of the house. */
export type ThingSection = (typeof thingSections)[number]
