import { airProperties } from '../air-properties.js'
import { firstImpossible } from '../first-impossible.js'
import { cannotSize, sized, type Sizing } from '../sizing.js'

interface WarmPipe {
  /** m, of the pipe itself. */
  readonly outsideDiameter: number
  /** K */
  readonly water: number
  /** K, still air around the pipe. */
  readonly air: number
  /** Where left out, the pipe is bare. */
  readonly insulation?: Insulation | undefined
  /** How the surface gives heat to the room: a coefficient, W/m2 K, or the emissivity from which it is found. */
  readonly surface: { readonly coefficient: number } | { readonly emissivity: number }
}

/** A sleeve around a pipe. */
export interface Insulation {
  /** m */
  readonly thickness: number
  /** W/m K */
  readonly conductivity: number
}

/**
 * Heat that a level pipe loses to still air: through its insulation, then from the surface by natural convection (Churchill
 * and Chu) and radiation. The wall of the pipe and the water in it resist next to nothing.
 *
 * Bare steel pipe with an emissivity of 0.9 lies within 10 % of the table in the HVAC Guide of 1941.
 *
 * @returns W/m
 *
 * @example
 * const pipe = { outsideDiameter: 0.022225, water: 323.15, air: 294.26, surface: { coefficient: 9.37 } }
 * pipeHeatLoss({ ...pipe, insulation: { thickness: 0.0254, conductivity: 0.0389 } }) // value 5.42
 */
export function pipeHeatLoss({ outsideDiameter, water, air, insulation, surface }: WarmPipe): Sizing {
  const coefficient = 'coefficient' in surface ? surface.coefficient : undefined
  const why = firstImpossible(
    ['diameter of the pipe', outsideDiameter, 'above zero'],
    ['temperature of the water', water, 'above zero'],
    ['temperature of the air', air, 'above zero'],
    ['thickness of the insulation', insulation?.thickness ?? 0, 'zero or more'],
    ['conductivity of the insulation', insulation?.conductivity ?? 1, 'above zero'],
    ['coefficient of the surface', coefficient ?? 1, 'above zero'],
    ['emissivity', 'emissivity' in surface ? surface.emissivity : 1, 'a share'],
  )
  if (why !== undefined) return cannotSize(why)
  const diameter = outsideDiameter + 2 * (insulation?.thickness ?? 0)
  const resistance =
    insulation === undefined ? 0 : Math.log(diameter / outsideDiameter) / (2 * Math.PI * insulation.conductivity)
  const lossAt = (skin: number): number => {
    const each = 'coefficient' in surface ? surface.coefficient : stillAir(skin, air, diameter, surface.emissivity)
    return Math.PI * diameter * each * (skin - air)
  }
  const skin = resistance === 0 ? water : skinTemperature(water, air, resistance, lossAt)
  const value = lossAt(skin)
  return sized({
    value,
    working: [
      { name: 'outside diameter', value: diameter, unit: 'm' },
      { name: 'resistance of the insulation', value: resistance, unit: 'm K/W' },
      { name: 'temperature of the surface', value: skin, unit: 'K' },
      { name: 'loss', value, unit: 'W/m' },
    ],
    assumed: ['a level pipe in still air', 'a pipe wall as warm as the water'],
    valid: water >= air && water <= 450 && air >= 250,
  })
}

/** W/m2 K from a level cylinder to a room whose walls are as warm as its air. */
function stillAir(skin: number, air: number, diameter: number, emissivity: number): number {
  const { density, viscosity, conductivity, prandtl } = airProperties((skin + air) / 2, 101_325)
  const buoyancy =
    (gravity * Math.abs(skin - air) * diameter ** 3 * density ** 2) / (((skin + air) / 2) * viscosity ** 2)
  const shape = (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27)
  const nusselt = (0.6 + (0.387 * (buoyancy * prandtl) ** (1 / 6)) / shape) ** 2
  const radiation = emissivity * stefanBoltzmann * (skin + air) * (skin ** 2 + air ** 2)
  return (nusselt * conductivity) / diameter + radiation
}

/** Where the heat through the insulation equals the heat from its surface; halved between air and water. */
function skinTemperature(water: number, air: number, resistance: number, lossAt: (skin: number) => number): number {
  const halve = ([cool, warm]: Bracket): Bracket => {
    const skin = (cool + warm) / 2
    const surplus = (water - skin) / resistance - lossAt(skin)
    return surplus > 0 === water > air ? [skin, warm] : [cool, skin]
  }
  const [cool, warm] = Array.from({ length: 60 }).reduce<Bracket>(halve, [air, water])
  return (cool + warm) / 2
}

type Bracket = readonly [cool: number, warm: number]

const gravity = 9.80665
/** W/m2 K4 */
const stefanBoltzmann = 5.670374419e-8
