import {
  availableSuctionHead,
  circulatorEfficiencyIndex,
  fluidDensity,
  type FlowEdge,
  type FlowNetwork,
  hydraulicPower,
  type NetworkSolution,
  type Pump,
  pumpAtSpeed,
  referencePower,
  shaftPower,
  solveFlowNetwork,
} from '../../src/sizing/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf, numbersOf } from './input-of.js'
import { readRecords } from './read-records.js'

const foot = si('length', '1 ft')
const gpm = si('volumeFlow', '1 gpm')
const psi = si('pressure', '1 psi')
const pound = si('mass', '1 lb')
const horsepower = 550 * foot * pound * 9.80665
const cubicMeterPerHour = 1 / 3600

const fluidOf9_81 = 9.81 / 9.80665

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'n-cengel87-Q1': (record) => flowIn(lift(record), 'narrow'),
  'n-cengel87-Q2': (record) => flowIn(lift(record), 'wide'),
  'n-cengel87-Qtot': (record) => flowIn(lift(record), 'pump'),
  // Heads of the record belong to a gravity of 9.81 m/s2.
  'n-cengel87-hL_m': (record) => edgeOf(lift(record), 'wide').loss / fluidOf9_81,
  'n-cengel87-hp_m': (record) => dutyHead(lift(record)) / fluidOf9_81,
  'n-cengel89-Q_A_both': (record) => flowIn(main(record, true), 'shower'),
  'n-cengel89-Q_B_both': (record) => flowIn(main(record, true), 'toilet'),
  'n-cengel89-Q_common': (record) => flowIn(main(record, true), 'main'),
  'n-cengel89-drop_fraction': (record) =>
    1 - flowIn(main(record, true), 'shower') / flowIn(main(record, false), 'shower'),
  'n-cengel89r-Q_A_both': (record) => flowIn(main(record, true), 'shower'),
  'n-cengel89r-Q_B_both': (record) => flowIn(main(record, true), 'toilet'),
  'n-cengel89r-Q_common': (record) => flowIn(main(record, true), 'main'),
  'n-4z-': (record) => {
    const zone = record.inputs['zone']
    return flowIn(squareZones(record), typeof zone === 'number' ? `zone ${zone}` : 'common')
  },
  'n-aff-': (record) => {
    const other = pumpAtSpeed({
      flow: inputOf(record, 'Q1_gpm') * gpm,
      head: inputOf(record, 'H1_ft') * foot,
      power: inputOf(record, 'P1_hp') * horsepower,
      speedRatio: inputOf(record, 'n2_rpm') / inputOf(record, 'n1_rpm'),
    })
    if (!other.sized) throw new Error(other.why)
    return other.power / horsepower
  },
  'n-crane715-P': (record) =>
    numberOf(
      shaftPower({
        flow: inputOf(record, 'Q_gpm') * gpm,
        head: inputOf(record, 'H_ft') * foot,
        density: inputOf(record, 'SG') * 999.0,
        efficiency: inputOf(record, 'eta'),
      }),
    ) / horsepower,
  'n-crane732': (record) =>
    numberOf(
      availableSuctionHead({
        pressure: (inputOf(record, 'p_tank_psig') + inputOf(record, 'p_atm_psia')) * psi,
        vaporPressure: inputOf(record, 'p_vap_psia') * psi,
        density: (inputOf(record, 'rho_lb_ft3') * pound) / foot ** 3,
        lift: inputOf(record, 'lift_ft') * foot,
        loss: inputOf(record, 'loss_ft') * foot,
      }),
    ) / foot,
  'n-eei-': (record) => numberOf(referencePower(inputOf(record, 'P_hyd_W'))),
  'n-eei': (record) =>
    numberOf(
      circulatorEfficiencyIndex({
        powers: [
          inputOf(record, 'P_L100_W'),
          inputOf(record, 'P_L75_W'),
          inputOf(record, 'P_L50_W'),
          inputOf(record, 'P_L25_W'),
        ],
        hydraulic: inputOf(record, 'P_hyd_W'),
      }),
    ),
  'n-phyd': (record) =>
    numberOf(
      hydraulicPower({
        flow: inputOf(record, 'Q_gpm') * gpm,
        head: inputOf(record, 'H_ft') * foot,
        density: numberOf(fluidDensity({ fluid: 'water', temperature: inputOf(record, 't_degC') + 273.15 })),
      }),
    ),
  'n-dz': (record) => {
    const solution = darcyZones(record)
    const zone = record.inputs['zone']
    if (typeof zone === 'number') return flowIn(solution, `zone ${zone}`) / cubicMeterPerHour
    return (solution.heads.get('supply') ?? NaN) - (solution.heads.get('return') ?? NaN)
  },
}

type Solved = Extract<NetworkSolution, { readonly solved: true }>

function solve(network: FlowNetwork): Solved {
  const solution = solveFlowNetwork(network)
  if (!solution.solved) throw new Error(solution.why)
  return solution
}

function edgeOf(solution: Solved, name: string): ReturnType<Solved['edge']> & object {
  const edge = solution.edge(name)
  if (edge === undefined) throw new Error(`The network has no edge named ${name}.`)
  return edge
}

function flowIn(solution: Solved, name: string): number {
  return edgeOf(solution, name).flow
}

function dutyHead(solution: Solved): number {
  return solution.pumps[0]?.head ?? NaN
}

/** Two parallel pipes between two reservoirs, fed by a pump of constant power: its curve is a hyperbola. */
function lift(record: CheckRecord): Solved {
  const density = inputOf(record, 'rho_kg_m3')
  const power = inputOf(record, 'eta_pump') * inputOf(record, 'P_shaft_W')
  const curve = Array.from({ length: 400 }, (_, index) => {
    const flow = 0.02 * 1.002 ** index
    return { flow, head: power / (density * 9.80665 * flow) }
  })
  const pipe = (name: string, diameter: string): FlowEdge => ({
    name,
    from: 'outlet',
    to: 'upper',
    parts: [
      {
        name,
        part: 'pipe',
        insideDiameter: inputOf(record, diameter),
        length: inputOf(record, 'L_m'),
        roughness: inputOf(record, 'eps_m'),
      },
    ],
  })
  return solve({
    density,
    viscosity: inputOf(record, 'mu_Pas'),
    fixed: [
      { node: 'lower', head: inputOf(record, 'zA_m') * fluidOf9_81 },
      { node: 'upper', head: inputOf(record, 'zB_m') * fluidOf9_81 },
    ],
    edges: [
      { name: 'pump', from: 'lower', to: 'outlet', parts: [], pump: { curve, control: { mode: 'constant-speed' } } },
      pipe('narrow', 'D1_m'),
      pipe('wide', 'D2_m'),
    ],
  })
}

/** A shower and a toilet on one main. */
function main(record: CheckRecord, toilet: boolean): Solved {
  const density = inputOf(record, 'rho_kg_m3')
  const insideDiameter = inputOf(record, 'D_m')
  const pipe = (length: string): FlowEdge['parts'][number] => ({
    name: 'pipe',
    part: 'pipe',
    insideDiameter,
    length: inputOf(record, length),
    roughness: inputOf(record, 'eps_m'),
  })
  const branch = (name: string, letter: string): FlowEdge => ({
    name,
    from: 'tee',
    to: `${name} outlet`,
    parts: [
      pipe(`branch${letter}_L_m`),
      { name: 'fittings', part: 'fittings', resistance: inputOf(record, `branch${letter}_sumK`), insideDiameter },
    ],
  })
  const outlet = (name: string, letter: string) => ({
    node: `${name} outlet`,
    head: inputOf(record, `branch${letter}_z_m`) * fluidOf9_81,
  })
  return solve({
    density,
    viscosity: inputOf(record, 'nu_m2_s') * density,
    fixed: [
      { node: 'street', head: inputOf(record, 'p_in_Pa_gauge') / (density * 9.80665) },
      outlet('shower', 'A'),
      outlet('toilet', 'B'),
    ],
    edges: [
      { name: 'main', from: 'street', to: 'tee', parts: [pipe('common_L_m')] },
      branch('shower', 'A'),
      { ...branch('toilet', 'B'), closed: !toilet },
    ],
  })
}

/** The record that a record refers to for its inputs, under its own. */
function withReferred(record: CheckRecord): CheckRecord {
  const see = record.inputs['see']
  const referred = readRecords().find(({ id }) => id === see)
  return { ...record, inputs: { ...referred?.inputs, ...record.inputs } }
}

/** Four zones, a common part and a pump, all of them by squares. */
function squareZones(row: CheckRecord): Solved {
  const record = withReferred(row)
  const zones = numbersOf(record, 'R_m_per_(m3/s)2')
  const open = record.inputs['open_zones'] === undefined ? [1, 2, 3, 4] : numbersOf(record, 'open_zones')
  return solve({
    density: 1000,
    viscosity: 0.001,
    edges: [
      { name: 'pump', from: 'inlet', to: 'outlet', parts: [], pump: squarePump(record) },
      {
        name: 'common',
        from: 'outlet',
        to: 'supply',
        parts: [{ name: 'common', part: 'square', coefficient: inputOf(record, 'R_common_m_per_(m3/s)2') }],
      },
      ...zones.map((coefficient, index): FlowEdge => ({
        name: `zone ${index + 1}`,
        from: 'supply',
        to: 'inlet',
        parts: [{ name: 'zone', part: 'square', coefficient }],
        closed: !open.includes(index + 1),
      })),
    ],
  })
}

function squarePump(record: CheckRecord): Pump {
  const setHead = record.inputs['Hset_m']
  const [shutOff, bend] = typeof setHead === 'number' ? [2 * setHead, 5e7] : pumpOf(record)
  const curve = [0, 1e-4, 2e-4, 3e-4].map((flow) => ({ flow, head: shutOff - bend * flow ** 2 }))
  if (typeof setHead === 'number') return { curve, control: { mode: 'constant-pressure', setHead } }
  return { curve, control: { mode: 'constant-speed' } }
}

function pumpOf(record: CheckRecord): readonly [shutOff: number, bend: number] {
  return [inputOf(record, 'H0_m'), inputOf(record, 'a_m_per_(m3/s)2')]
}

interface DarcyPart {
  readonly D_m: number
  readonly L_m: number
  readonly sumK: number
  readonly Kv_m3_h?: number
}

/** Four zones of pipe, fittings and valve, a common part and the pump of the record. */
function darcyZones(row: CheckRecord): Solved {
  const record = withReferred(row)
  const open = numbersOf(record, 'open_zones')
  const roughness = inputOf(record, 'eps_m')
  const setHead = record.inputs['Hset_m']
  // The record with a set head knows no curve: this one is out of its way.
  const reach = typeof setHead === 'number' ? 4 : 1
  const curve = [0, 0.5, 1, 1.5, 2, 2.5].map((hourly) => ({
    flow: hourly * reach * cubicMeterPerHour,
    head: 6.2 - 0.35 * hourly - 0.75 * hourly ** 2,
  }))
  const control: Pump['control'] =
    typeof setHead === 'number' ? { mode: 'constant-pressure', setHead } : { mode: 'constant-speed' }
  return solve({
    density: inputOf(record, 'rho_kg_m3'),
    viscosity: inputOf(record, 'mu_Pas'),
    method: 'churchill',
    edges: [
      { name: 'pump', from: 'return', to: 'outlet', parts: [], pump: { curve, control } },
      {
        name: 'common',
        from: 'outlet',
        to: 'supply',
        parts: darcyParts(record.inputs['common'] as DarcyPart, roughness),
      },
      ...(record.inputs['zones'] as readonly DarcyPart[]).map((zone, index): FlowEdge => ({
        name: `zone ${index + 1}`,
        from: 'supply',
        to: 'return',
        parts: darcyParts(zone, roughness),
        closed: !open.includes(index + 1),
      })),
    ],
  })
}

function darcyParts({ D_m, L_m, sumK, Kv_m3_h }: DarcyPart, roughness: number): FlowEdge['parts'] {
  return [
    { name: 'pipe', part: 'pipe', insideDiameter: D_m, length: L_m, roughness },
    { name: 'fittings', part: 'fittings', resistance: sumK, insideDiameter: D_m },
    ...(Kv_m3_h === undefined ? [] : [{ name: 'valve', part: 'valve', kv: Kv_m3_h } as const]),
  ]
}
