import { part, run, type House, type Part, type Run } from './build.js'

/** A boiler whose other ports are capped. */
export const boiler = part('B1', 'boiler', { capped: ['relief', 'condensate'] })
/** A ring of two branches, with a leg in which the water stands. */
export const lines = [
  run('L-supply', 'B1.supply T1 P1 H1.main'),
  run('L-left', 'H1.branch1 S1 H2.branch1'),
  run('L-right', 'H1.branch2 S2 H2.branch2'),
  run('L-return', 'H2.main B1.return'),
  run('L-leg', 'T1.branch RV1.inlet'),
]
const parts = [
  boiler,
  part('T1', 'tee'),
  part('P1', 'pump'),
  part('S1', 'checkValve'),
  part('S2', 'checkValve'),
  part('H1', 'header', { values: { branches: 2 } }),
  part('H2', 'header', { values: { branches: 2 } }),
  part('RV1', 'relief'),
]
/** The ring with other lines, or with other parts. */
export const house = (more: readonly Run[] = lines, all: readonly Part[] = parts): House => ({ parts: all, runs: more })
