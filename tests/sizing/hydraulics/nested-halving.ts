import type { ScenarioHouse, Stretch } from './scenario-houses.js'

/** What the other way of reckoning finds for a house, in gpm and feet. */
export interface Found {
  readonly total: number
  readonly head: number
  readonly flows: ReadonlyMap<string, number>
}

/**
 * A house by nested halving, in feet and gpm throughout: for a head across the headers each branch has its flow, and the head
 * is the one at which the pump meets all of it. Friction is its own too: Colebrook by halving, straight from Re 2,000 to 4,000.
 */
export function byHalving(house: ScenarioHouse, open: readonly string[], setHead = Infinity): Found {
  const branches = house.branches.filter(({ name }) => open.includes(name))
  const kinematic = house.viscosity / house.density / 0.3048 ** 2
  const branchLoss = (branch: Stretch, flow: number): number => {
    const { count = 1, cv } = branch.ways ?? {}
    const ahead = cv === undefined ? 0 : lossOf({ name: branch.name, cv: [cv] }, flow, kinematic)
    return ahead + lossOf(branch, flow / count, kinematic)
  }
  const flowsAt = (head: number): ReadonlyMap<string, number> =>
    new Map(branches.map((branch) => [branch.name, halve((flow) => head - branchLoss(branch, flow), 100)]))
  const sum = (flows: ReadonlyMap<string, number>): number => [...flows.values()].reduce((all, flow) => all + flow, 0)
  const pumpHead = (flow: number): number => Math.min(setHead, straightLines(house.pump, flow))
  const across = halve((head) => {
    const total = sum(flowsAt(head))
    return pumpHead(total) - lossOf(house.common, total, kinematic) - head
  }, 100)
  const flows = flowsAt(across)
  return { total: sum(flows), head: pumpHead(sum(flows)), flows }
}

/** ft at a flow in gpm. */
export function lossOf({ pipes = [], cv = [], square = 0 }: Stretch, flow: number, kinematic: number): number {
  const pipe = pipes.reduce((sum, { inside, feet, rough = 5e-6 }) => {
    const diameter = inside / 12
    const velocity = (flow * 231) / 1728 / 60 / ((Math.PI / 4) * diameter ** 2)
    const reynolds = (velocity * diameter) / kinematic
    const factor = factorOf(reynolds, rough / diameter)
    return sum + (factor * (feet / diameter) * velocity ** 2) / (2 * 32.174)
  }, 0)
  const valves = cv.reduce((sum, each) => sum + (flow / each) ** 2 * 2.3095, 0)
  return pipe + valves + square * flow ** 2
}

function factorOf(reynolds: number, roughness: number): number {
  if (reynolds === 0) return 0
  if (reynolds < 2000) return 64 / reynolds
  if (reynolds > 4000) return colebrook(reynolds, roughness)
  return 0.032 + ((colebrook(4000, roughness) - 0.032) * (reynolds - 2000)) / 2000
}

function colebrook(reynolds: number, roughness: number): number {
  const off = (factor: number): number =>
    1 / Math.sqrt(factor) + 2 * Math.log10(roughness / 3.7 + 2.51 / (reynolds * Math.sqrt(factor)))
  return halve(off, 1)
}

function straightLines(points: readonly (readonly [number, number])[], flow: number): number {
  const next = points.findIndex(([at]) => at >= flow)
  const [to, from] = next < 1 ? [points.at(-1)!, points.at(-2)!] : [points[next]!, points[next - 1]!]
  return from[1] + ((to[1] - from[1]) * (flow - from[0])) / (to[0] - from[0])
}

/** Where a falling function crosses zero, between nothing and a highest value. */
function halve(of: (x: number) => number, highest: number): number {
  let [low, high] = [0, highest]
  for (let step = 0; step < 70; step++) {
    const middle = (low + high) / 2
    if (of(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}
