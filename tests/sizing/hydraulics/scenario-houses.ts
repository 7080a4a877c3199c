import { type FlowEdge, type FlowNetwork, type Pump } from '../../../src/sizing/index.js'
import { si } from '../../../src/units/index.js'

const foot = si('length', '1 ft')
const inch = si('length', '1 in')
const gpm = si('volumeFlow', '1 gpm')

/** One stretch as the trade writes it: feet of pipe of an inside diameter in inches, a Cv, a coefficient of the square of gpm. */
export interface Stretch {
  readonly name: string
  readonly pipes?: readonly { readonly inside: number; readonly feet: number; readonly rough?: number }[]
  readonly cv?: readonly number[]
  /** ft of head per gpm squared. */
  readonly square?: number
  /** Equal ways side by side, behind a valve of this Cv. */
  readonly ways?: { readonly count: number; readonly cv: number }
}

/** A house of one pump and parallel branches. */
export interface ScenarioHouse {
  /** kg/m3 and Pa s. */
  readonly density: number
  readonly viscosity: number
  /** `[gpm, ft]` */
  readonly pump: readonly (readonly [number, number])[]
  readonly common: Stretch
  readonly branches: readonly Stretch[]
}

/** Roughness of copper and PEX in feet, and of steel. */
const smooth = 5e-6
const steel = 1.5e-4

const waterAt140 = { density: 983.2, viscosity: 983.2 * 5.1e-6 * foot ** 2 }
const glycolOf35 = { density: 1030, viscosity: 1030 * 9e-6 * foot ** 2 }

/** Larkspur Lane: working of its branches, with the common pipe and the boiler. */
export const larkspurLane: ScenarioHouse = {
  ...waterAt140,
  pump: [
    [0, 19],
    [2, 18.7],
    [4, 17.6],
    [6, 16.3],
    [8, 14.6],
    [10, 12.6],
    [12, 10.2],
    [14, 7.6],
    [16, 4.6],
  ],
  common: { name: 'common', pipes: [{ inside: 1.291, feet: 46 }], square: 0.078 + 0.02 },
  branches: [
    {
      name: 'Z1',
      pipes: [
        { inside: 1.291, feet: 60 },
        { inside: 2.067, feet: 64, rough: steel },
      ],
      cv: [10],
      square: 0.15,
    },
    { name: 'Z2', pipes: [{ inside: 1.055, feet: 96 }], cv: [7.5], square: 0.15 },
    { name: 'Z3', pipes: [{ inside: 0.811, feet: 150 }], cv: [7.5] },
    { name: 'Z4', pipes: [{ inside: 0.485, feet: 150 }], cv: [0.75], ways: { count: 2, cv: 3.5 } },
    { name: 'tank', pipes: [{ inside: 1.055, feet: 44 }], cv: [8.9], square: 0.095 },
  ],
}

/** Cooper's Stair with its balancing valves as corrected. */
export const coopersStair: ScenarioHouse = {
  ...glycolOf35,
  pump: [
    [0, 26],
    [3, 25.4],
    [6, 23.6],
    [9, 20.6],
    [12, 16.6],
    [15, 11.4],
    [18, 5],
  ],
  common: { name: 'common', pipes: [{ inside: 1.291, feet: 52 }], square: 0.055 + 0.02 },
  branches: [
    {
      name: 'Z1',
      pipes: [
        { inside: 1.291, feet: 70 },
        { inside: 2.469, feet: 110, rough: steel },
      ],
      cv: [10],
      square: 0.2,
    },
    { name: 'Z2', pipes: [{ inside: 1.055, feet: 120 }], cv: [7.5], square: 0.19 },
    { name: 'Z3', pipes: [{ inside: 0.811, feet: 210 }], cv: [7.5] },
    { name: 'Z4', pipes: [{ inside: 0.811, feet: 90 }], cv: [7.5], square: 3.6 },
    { name: 'Z5', pipes: [{ inside: 0.811, feet: 110 }], cv: [7.5], square: 1.2 },
    { name: 'tank', pipes: [{ inside: 1.055, feet: 50 }], cv: [8.9], square: 0.06 },
  ],
}

/** The house as a network for the library; Z4 of Larkspur Lane has one zone valve ahead of its two loops. */
export function networkOf(house: ScenarioHouse, open: readonly string[], setHead?: number): FlowNetwork {
  const curve = house.pump.map(([flow, head]) => ({ flow: flow * gpm, head: head * foot }))
  const control: Pump['control'] =
    setHead === undefined ? { mode: 'constant-speed' } : { mode: 'constant-pressure', setHead: setHead * foot }
  return {
    density: house.density,
    viscosity: house.viscosity,
    edges: [
      { name: 'C1', from: 'return', to: 'boiler', parts: [], pump: { curve, control } },
      { name: 'common', from: 'boiler', to: 'supply', parts: partsOf(house.common) },
      ...house.branches.flatMap((branch) => edgesOf(branch, !open.includes(branch.name))),
    ],
  }
}

function edgesOf(branch: Stretch, closed: boolean): readonly FlowEdge[] {
  const { name, ways } = branch
  if (ways === undefined) return [{ name, from: 'supply', to: 'return', parts: partsOf(branch), closed }]
  const valve = { name, from: 'supply', to: `${name} split`, parts: partsOf({ name, cv: [ways.cv] }), closed }
  const loops = Array.from({ length: ways.count }, (_, index) => ({
    name: `${name} way ${index + 1}`,
    from: `${name} split`,
    to: 'return',
    parts: partsOf(branch),
    closed,
  }))
  return [valve, ...loops]
}

/** Parts of a stretch for the library. */
export function partsOf({ name, pipes = [], cv = [], square = 0 }: Stretch): FlowEdge['parts'] {
  return [
    ...pipes.map(({ inside, feet, rough = smooth }) => ({
      name,
      part: 'pipe' as const,
      insideDiameter: inside * inch,
      length: feet * foot,
      roughness: rough * foot,
    })),
    ...cv.map((each) => ({ name, part: 'valve' as const, kv: each / 1.1560992 })),
    { name, part: 'square' as const, coefficient: (square * foot) / gpm ** 2 },
  ]
}
