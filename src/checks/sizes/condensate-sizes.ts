import type { Context } from '../../facts/index.js'
import { boiler, neutralizer, type Thing } from '../../model/index.js'
import {
  cannotSize,
  condensate,
  condensateRate,
  condensedShare,
  loadShare,
  neutralizerCharge,
  neutralizerYears,
  resetReturn,
  waterDensity,
  type Sizing,
} from '../../sizing/index.js'
import { si } from '../../units/index.js'
import { chain, over, stated } from './chain.js'
import { designOfHouse } from './curve-sizes.js'
import { gasNamed, withFlue } from './flue-of-boiler.js'
import { efficiencyAt, inSeason } from './season-sizes.js'
import { sizeLine, type SizeLine, type Taking } from './size-line.js'
import { slipSizes } from './slip-sizes.js'
import { zoneLoads } from './zone-loads.js'

/** Condensate as it drips. */
const density = waterDensity(si('temperature', '100 F')).value
/** kg of calcite that a cubic meter uses, what works of a charge, and how much more is filled in than used; common practice. */
const practice = { calcitePerVolume: 0.2, usable: 0.25, reserve: 4 } as const
const granted = ['a cubic meter of condensate uses 0.2 kg of calcite, and a quarter of a charge works'] as const
const approach = si('temperatureDifference', '9 F')

/** Condensate of each boiler, what takes its acid out, and what the printed slips say. */
export function condensateSizes(context: Context): readonly SizeLine[] {
  const { ask, listed } = context
  const boilers = listed(boiler).things
  const [only, ...more] = boilers
  return [
    ...boilers.map((one) => mostLine(context, one)),
    ...(only === undefined || more.length > 0 ? [] : yearLines(context, only)),
    ...listed(neutralizer).things.map((one) =>
      sizeLine({ name: 'input that it is rated for', of: one.id }, 'heatRate', (take) =>
        stated('plate of the neutralizer', take.number(ask('ratedInput', one)), 'W'),
      ),
    ),
    ...slipSizes(context),
  ]
}

function mostLine({ ask }: Context, one: Thing): SizeLine {
  return sizeLine({ name: 'most condensate', of: one.id, readAs: 'drip' }, 'volumeFlow', (take) => {
    const fuel = gasNamed(take.word(ask('fuel', one)))
    const heatInput = take.number(ask('input', one))
    const mass =
      fuel === undefined
        ? cannotSize('Condensate is worked out for gas only.')
        : condensateRate({ fuel, heatInput, condensedShare: 1 })
    return chain(mass, (rate) => volumeOf(rate, 'm3/s'))
  })
}

/** A year of one boiler that carries the whole house; what several share is not known. */
function yearLines(context: Context, one: Thing): readonly SizeLine[] {
  const of = one.id
  const treating = context.listed(neutralizer).things.filter((each) => serves(context, each, of))
  return [
    sizeLine({ name: 'gas that heating burns in an average year', of }, 'energy', (take) =>
      gasOfYear(context, take, one),
    ),
    sizeLine({ name: 'condensate of heating in an average year', of }, 'volume', (take) =>
      condensateOfYear(context, take, one),
    ),
    sizeLine({ name: 'neutralizer charge for a year', of }, 'mass', (take) =>
      granting(
        chain(condensateOfYear(context, take, one), (yearlyVolume) => neutralizerCharge({ ...practice, yearlyVolume })),
      ),
    ),
    ...treating.map((each) =>
      sizeLine({ name: 'time that its charge lasts', of: each.id }, 'time', (take) => {
        const charge = take.number(context.ask('mediumMass', each))
        return granting(
          chain(
            chain(condensateOfYear(context, take, one), (yearlyVolume) =>
              neutralizerYears({ ...practice, charge, yearlyVolume }),
            ),
            (years) => stated('time', years * year, 's'),
          ),
        )
      }),
    ),
  ]
}

const year = si('time', '1 year')

function serves({ ask }: Context, each: Thing, id: string): boolean {
  const served = ask('serves', each)
  return served.state === 'word' && served.word === id
}

function granting(sizing: Sizing): Sizing {
  return sizing.sized ? { ...sizing, assumed: [...sizing.assumed, ...granted] } : sizing
}

function gasOfYear(context: Context, take: Taking, one: Thing): Sizing {
  return chain(zoneLoads(context, take), (load) =>
    chain(fullLoadTime(context, take), (time) =>
      chain(efficiencyAt(context, take, { one, part: 0.5 }), (efficiency) =>
        over('gas burned', load * time, ['efficiency', efficiency], 'J'),
      ),
    ),
  )
}

/** Time at full load that makes the heat of an average year. */
function fullLoadTime(context: Context, take: Taking): Sizing {
  return inSeason(context, take, (bins, design) => {
    const hours = bins.map(({ outdoor, hours: all }) => {
      const share = loadShare(design, outdoor)
      return share.sized ? all * share.value : NaN
    })
    const total = hours.reduce((sum, one) => sum + one, 0)
    return Number.isNaN(total)
      ? loadShare(design, design.designOutdoor)
      : stated('time at full load that makes the heat of the year', total * si('time', '1 h'), 's')
  })
}

/** As much of the water condenses as with the return of half the load, about which most of the heat is made. */
function condensateOfYear(context: Context, take: Taking, one: Thing): Sizing {
  const design = designOfHouse(context, take)
  const half = (design.balance + design.designOutdoor) / 2
  return chain(gasOfYear(context, take, one), (heat) =>
    withFlue(context, take, {
      burner: one,
      next: (flue) =>
        chain(resetReturn(design, half), (back) =>
          chain(condensedShare({ ...flue, flueTemperature: back + approach }), (share) =>
            chain(condensate({ fuel: flue.fuel, heat, condensedShare: share }), (mass) => volumeOf(mass, 'm3')),
          ),
        ),
    }),
  )
}

function volumeOf(mass: number, unit: 'm3' | 'm3/s'): Sizing {
  const drips = unit === 'm3/s' ? ({ readAs: 'drip' } as const) : {}
  const volume = over('condensate by volume', mass, ['density of water', density], unit)
  if (!volume.sized) return volume
  return {
    ...volume,
    working: [
      { name: 'density of water at 100 F', value: density, unit: 'kg/m3' },
      ...volume.working.map((step) => ({ ...step, ...drips })),
    ],
  }
}
