import { type FlowNetwork, solveFlowNetwork } from '../../src/sizing/index.js'
import { timesOf } from './measure.js'
import { printTable, spokenTime } from './table.js'

const sizes = [4, 40, 400] as const

/** How the time to solve one state grows with the zones side by side: 1.00 is in step with them, 2.00 with their square. */
export async function measureFlowGrowth(): Promise<void> {
  const networks = sizes.map((zones) => [zones, parallelZones(zones)] as const)
  const times = await timesOf(
    Object.fromEntries(networks.map(([zones, network]) => [String(zones), () => solveFlowNetwork(network)])),
  )
  const perZone = sizes.map((zones) => (times[String(zones)] ?? NaN) / zones)
  const exponents = sizes.slice(1).map((zones, index) => {
    const before = sizes[index] ?? zones
    const ratio = (times[String(zones)] ?? NaN) / (times[String(before)] ?? NaN)
    return (Math.log(ratio) / Math.log(zones / before)).toFixed(2)
  })
  printTable('Flows of one state of so many parallel zones, time for each zone', [
    ['', ...sizes.map(String), 'exponent, of each step'],
    ['solving', ...perZone.map(spokenTime), exponents.join(', ')],
  ])
}

function parallelZones(zones: number): FlowNetwork {
  const pipe = (name: string, insideDiameter: number, length: number) =>
    ({ name, part: 'pipe', insideDiameter, length, roughness: 1.5e-6 }) as const
  const curve = [0, 0.25, 0.5, 0.75, 1].map((share) => ({ flow: share * 1e-3 * zones, head: 6 - 5 * share ** 2 }))
  return {
    density: 983.2,
    viscosity: 0.000466,
    edges: [
      { name: 'C1', from: 'return', to: 'out', parts: [], pump: { curve, control: { mode: 'constant-speed' } } },
      { name: 'common', from: 'out', to: 'supply', parts: [pipe('main', 0.03 * Math.sqrt(zones), 20)] },
      ...Array.from({ length: zones }, (_, index) => [
        {
          name: `supply ${index}`,
          from: 'supply',
          to: `emitter ${index}`,
          parts: [pipe('pipe', 0.0206, 10 + (index % 7)), { name: 'valve', part: 'valve', kv: 6 } as const],
        },
        { name: `return ${index}`, from: `emitter ${index}`, to: 'return', parts: [pipe('pipe', 0.0206, 10)] },
      ]).flat(),
    ],
  }
}
