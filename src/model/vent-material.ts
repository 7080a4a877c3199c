import { choice } from './field.js'

/** What a vent or air intake pipe is made of, as printed on the pipe. */
export const ventMaterial = choice({
  'pvc-solid': 'solid-wall PVC',
  'pvc-cellular': 'cellular-core PVC',
  cpvc: 'CPVC',
  'polypropylene-ul1738': 'listed polypropylene (UL 1738)',
  'stainless-ul1738': 'listed stainless steel (UL 1738)',
  aluminum: 'aluminum',
  'galvanized-steel': 'galvanized steel',
  abs: 'ABS',
})

export type VentMaterial = keyof (typeof ventMaterial)['choices']
