import { type NetworkSolution, solveFlowNetwork } from '../../../src/sizing/index.js'
import { si } from '../../../src/units/index.js'
import { networkOf, type ScenarioHouse } from './scenario-houses.js'

type Solved = Extract<NetworkSolution, { readonly solved: true }>

/** A house with some of its branches open and its pump at a head in feet, or at full speed. */
export function solvedHouse(house: ScenarioHouse, open: readonly string[], setHead?: number): Solved {
  const solution = solveFlowNetwork(networkOf(house, open, setHead))
  if (!solution.solved) throw new Error(solution.why)
  return solution
}

/** gpm through one edge. */
export function flowInGpm(solution: Solved, name: string): number {
  return (solution.edge(name)?.flow ?? NaN) / si('volumeFlow', '1 gpm')
}

/** gpm through some branches together. */
export function sumOf(solution: Solved, branches: readonly string[]): number {
  return branches.reduce((sum, name) => sum + flowInGpm(solution, name), 0)
}

/** ft that the pump makes. */
export function headInFeet(solution: Solved): number {
  return (solution.pumps[0]?.head ?? NaN) / si('length', '1 ft')
}

/** ft/s in the narrowest pipe of an edge. */
export function velocityIn(solution: Solved, name: string): number {
  return (solution.edge(name)?.velocity ?? NaN) / si('length', '1 ft')
}
