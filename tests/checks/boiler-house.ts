import type { Written } from './asking.js'

export const line = (id: string, path: string, more: Written = {}): Written => ({
  id,
  medium: 'heatingWater',
  path: path.split(' '),
  ...more,
})

/** A boiler with its relief valve in the tapping and one radiator, all of it drawn and counted. */
export const boilerHouse = {
  complete: { all: '9' },
  components: [
    { id: 'B1', kind: 'boiler', capped: ['gas', 'flue', 'intake', 'condensate'] },
    {
      id: 'RV1',
      kind: 'reliefValve',
      protects: 'B1',
      setPressure: '30 psi',
      capacity: '300000 Btu/h',
      capped: ['outlet'],
    },
    { id: 'ISO1', kind: 'isolationValve', locked: 'no', maximumPressure: '150 psi' },
    { id: 'E1', kind: 'castIronRadiator', topElevation: '25.5 ft', maximumPressure: '60 psi' },
    { id: 'TE1', kind: 'tee', maximumPressure: '150 psi' },
    { id: 'EX1', kind: 'expansionTank', maximumPressure: '100 psi' },
  ],
  lines: [
    line('L-relief', 'B1.relief RV1.inlet'),
    line('L-circuit', 'B1.supply ISO1 E1 TE1 B1.return'),
    line('L-tank', 'TE1.branch EX1.system'),
  ],
} satisfies Written

/** The same house with things, lines or counts in place of others of the same id. */
export function changed(house: Written, { components = [], lines = [], ...rest }: Changes): Written {
  return {
    ...house,
    components: replaced(listOf(house.components), components),
    lines: replaced(listOf(house.lines), lines),
    ...rest,
  }
}

export interface Changes extends Written {
  readonly components?: readonly Written[]
  readonly lines?: readonly Written[]
}

function listOf(value: unknown): readonly Written[] {
  return Array.isArray(value) ? value.filter(isWritten) : []
}

function isWritten(value: unknown): value is Written {
  return typeof value === 'object' && value !== null
}

function replaced(before: readonly Written[], after: readonly Written[]): readonly Written[] {
  const kept = before.map((one) => after.find(({ id }) => id === one.id) ?? one)
  return [...kept, ...after.filter(({ id }) => !before.some((one) => one.id === id))]
}
