import {
  churchill,
  cvFromKv,
  darcyFriction,
  fluidDensity,
  fluidViscosity,
  headOf,
  kvFromCv,
  lengthOfResistance,
  type MovingFluid,
  pipeLoss,
  resistanceOfKv,
  reynoldsNumber,
  runLoss,
  twoKResistance,
} from '../../src/sizing/index.js'
import { copperFittingLength, pipeRoughness, pipeSize } from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf, textOf } from './input-of.js'

const inch = si('length', '1 in')
const foot = si('length', '1 ft')
const gpm = si('volumeFlow', '1 gpm')
const pound = si('mass', '1 lb')
const literPerMinute = 1e-3 / 60
const poundForcePerSquareFoot = si('pressure', '1 psi') / 144

const anotherFormula: Adapter = () => ({
  notApplicable: 'an approximation of Colebrook and White, which the library solves; the tests hold it against it',
})

const colebrook: Adapter = (record) =>
  numberOf(darcyFriction({ reynolds: inputOf(record, 'Re'), relativeRoughness: inputOf(record, 'eD') }))

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'f-colebrook-': colebrook,
  'f-cw-': colebrook,
  'f-lam-': colebrook,
  'f-swameejain-': anotherFormula,
  'f-serghides-': anotherFormula,
  'f-blasius-': anotherFormula,
  'f-ch-': (record) => churchill(inputOf(record, 'Re'), inputOf(record, 'eD')),
  'f-cengel83-f': () => {
    const insideDiameter = foot / 6
    const reynolds = numberOf(reynoldsNumber({ flow: steelTubeFlow, insideDiameter, ...steelTubeWater }))
    return numberOf(darcyFriction({ reynolds, relativeRoughness: (7e-6 * foot) / insideDiameter }))
  },
  // Fluid and roughness are those of f-cengel83-f.
  'f-cengel83-dp': (record) => {
    const pipe = { insideDiameter: foot / 6, length: inputOf(record, 'L_ft') * foot, roughness: 7e-6 * foot }
    return numberOf(pipeLoss({ flow: steelTubeFlow, ...pipe, ...steelTubeWater })) / poundForcePerSquareFoot
  },
  'f-crane71-f': (record) => {
    const insideDiameter = inputOf(record, 'id_mm') / 1000
    const water = waterAt(inputOf(record, 't_degC'))
    const flow = inputOf(record, 'Q_L_min') * literPerMinute
    const reynolds = numberOf(reynoldsNumber({ flow, insideDiameter, ...water }))
    return numberOf(darcyFriction({ reynolds, relativeRoughness: pipeRoughness('drawn-tube').rough / insideDiameter }))
  },
  'f-crane72-K': (record) => resistanceAt(inputOf(record, 'Kv_m3_h'), record),
  'f-crane72-LD': (record) =>
    numberOf(
      lengthOfResistance({ resistance: inputOf(record, 'K'), insideDiameter: 1, friction: inputOf(record, 'fd') }),
    ),
  // The bends by the source's own formula, K = (n - 1)(0.25 pi ft r/d + K90 / 2) + K90 with n 2, r/d 4, K90 14 ft; ft is the
  // factor of fully rough flow. The record allows 8 %, and 7.5 % are used: the source does not tell its bends exactly.
  'f-crane711': (record) => {
    const insideDiameter = pipeSize('steel-40', 1)!.inside
    const { rough } = pipeRoughness('steel')
    const fullyRough = numberOf(darcyFriction({ reynolds: 1e8, relativeRoughness: rough / insideDiameter }))
    const bend = fullyRough * (Math.PI + 1.5 * 14)
    return numberOf(
      runLoss({
        flow: inputOf(record, 'Q_L_min') * literPerMinute,
        ...waterAt(80),
        parts: [
          { name: 'pipe', part: 'pipe', insideDiameter, length: 8, roughness: rough },
          { name: 'bends', part: 'fittings', resistance: 7 * bend, insideDiameter },
        ],
      }),
    )
  },
  'f-crane719': () => ({
    notApplicable: 'it names its fittings but carries neither their coefficients nor the pipe wall',
  }),
  'f-cv-kv': (record) => numberOf(cvFromKv(inputOf(record, 'Kv_m3_h'))),
  'f-kv-cv': (record) => numberOf(kvFromCv(inputOf(record, 'Cv'))),
  'f-kv-k': (record) => resistanceAt(inputOf(record, 'Kv_m3_h'), record),
  'f-cv-k': (record) => resistanceAt(numberOf(kvFromCv(inputOf(record, 'Cv'))), record),
  'f-hooper': (record) =>
    numberOf(
      twoKResistance({
        constants: { k1: inputOf(record, 'K1'), kInfinite: inputOf(record, 'Kinf') },
        reynolds: inputOf(record, 'Re'),
        insideDiameter: inputOf(record, 'D_in') * inch,
      }),
    ),
  'f-cu-': (record) => {
    const pipe = {
      insideDiameter: inputOf(record, 'id_in') * inch,
      length: 100 * foot,
      roughness: inputOf(record, 'eps_m'),
    }
    const water = waterAt(inputOf(record, 't_degC'))
    const pressure = numberOf(pipeLoss({ flow: inputOf(record, 'Q_gpm') * gpm, ...pipe, ...water }))
    return numberOf(headOf({ pressure, density: water.density })) / foot
  },
  'f-leq90-': (record) => listedLength(record, 'elbow90'),
  'f-leqtee-': (record) => listedLength(record, 'tee-branch'),
}

const steelTubeFlow = 0.2 * foot ** 3
const steelTubeWater = { density: (62.36 * pound) / foot ** 3, viscosity: (0.0007536 * pound) / foot }

function waterAt(celsius: number): MovingFluid {
  const state = { fluid: 'water', temperature: celsius + 273.15 } as const
  return { density: numberOf(fluidDensity(state)), viscosity: numberOf(fluidViscosity(state)) }
}

function resistanceAt(kv: number, record: CheckRecord): number {
  return numberOf(resistanceOfKv({ kv, insideDiameter: inputOf(record, 'D_m') }))
}

function listedLength(record: CheckRecord, fitting: 'elbow90' | 'tee-branch'): number {
  const size = si('nominalSize', textOf(record, 'nominal_in'))
  return (copperFittingLength({ list: 'state-code', fitting, size }) ?? NaN) / foot
}
