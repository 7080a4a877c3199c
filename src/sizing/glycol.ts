/** The two antifreezes made for heating systems. */
export type Glycol = 'propylene-glycol' | 'ethylene-glycol'

/**
 * Density that no mixture of the glycol with water exceeds at 0 C or warmer; kg/m3.
 *
 * Rounded up, from memory, with room for inhibitors: propylene glycol is densest near three parts in four, at about 1,060;
 * ethylene glycol grows denser up to the pure glycol, at about 1,130.
 */
export const densestMixture: Readonly<Record<Glycol, number>> = Object.freeze({
  'propylene-glycol': 1080,
  'ethylene-glycol': 1150,
})
