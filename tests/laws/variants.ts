import fc, { type GeneratorValue } from 'fast-check'
import { applyEdits, forgettable, leavesOf, type Edit, type LeafField, type Model } from '../../src/model/index.js'
import { isMap, listAt, problemList } from '../../src/model/index.js'
import { writeQuantity } from '../../src/units/index.js'

/** Ranges in SI in which rules change their mind. */
const ranges: Readonly<Record<string, readonly [number, number]>> = {
  length: [0, 30],
  area: [0, 0.1],
  volume: [0, 0.5],
  temperature: [275, 365],
  temperatureDifference: [0, 60],
  pressure: [0, 700_000],
  heatRate: [0, 200_000],
  apparentPower: [0, 80],
  volumeFlow: [0, 0.002],
  time: [0, 1e8],
  fraction: [0, 0.6],
  nominalSize: [0.5, 3],
  date: [19_000, 21_000],
  count: [0, 8],
  slope: [-0.1, 0.1],
  energyPerVolume: [3e7, 5e7],
  mass: [0, 500],
  voltage: [0, 240],
  current: [0, 20],
  concentration: [0, 0.001],
  head: [0, 15],
  flowCoefficient: [0, 20],
  velocity: [0, 4],
  heatRatePerLength: [0, 1000],
  heatFlux: [0, 200],
  thermalResistance: [0, 2],
  heatLossCoefficient: [0, 1000],
  energy: [0, 3e11],
  number: [0, 14],
}

/** A house made different at random: values set, guessed or emptied, things taken out or put in. Always readable. */
export function vary(house: unknown, model: Model, g: GeneratorValue, changes: number): unknown {
  return Array.from({ length: changes }, (_, index) => index).reduce<unknown>((document) => {
    const edited = applyEdits(document, [anyEdit(document, model, g)], model)
    return edited.ok ? edited.document : document
  }, house)
}

/** One address that can be forgotten, at random. */
export function anyAddress(document: unknown, model: Model, g: GeneratorValue): string | undefined {
  const addresses = forgettable(document, model)
  return addresses.length === 0 ? undefined : pick(addresses, g)
}

function anyEdit(document: unknown, model: Model, g: GeneratorValue): Edit {
  const verb = g(fc.nat, { max: 9 })
  const items = itemsOf(document)
  const item = items.length === 0 ? undefined : pick(items, g)
  if (verb === 0 && item !== undefined) return { remove: item.id }
  if (verb === 1) return { insert: { id: `N${g(fc.nat, { max: 99_999 })}`, kind: pick(componentKinds(model), g) } }
  if (verb === 2)
    return { set: `complete.${pick(['all', ...componentKinds(model)], g)}`, to: String(g(fc.nat, { max: 12 })) }
  if (item === undefined || verb === 3) return anySingletonEdit(model, g)
  return setField(item.id, item.kind, { document, model, g })
}

function componentKinds(model: Model): readonly string[] {
  return [...model.kinds.values()].filter((kind) => kind.section === 'components').map((kind) => kind.name)
}

function anySingletonEdit(model: Model, g: GeneratorValue): Edit {
  const kinds = [...model.kinds.values()].filter(
    (kind) => kind.section === 'singleton' && Object.keys(kind.fields).length > 0,
  )
  const kind = pick(kinds, g)
  const leaves = [...leavesOf(kind.fields)].filter(([name]) => name !== 'authorities')
  const [name, field] = pick(leaves, g)
  return { set: `${kind.name}.${name}`, to: anyEntry(field, [], g) }
}

interface Place {
  readonly document: unknown
  readonly model: Model
  readonly g: GeneratorValue
}

function setField(id: string, kind: string, { document, model, g }: Place): Edit {
  const leaves = [...(model.leaves.get(kind) ?? [])].filter(([name]) => name !== 'use' && name !== 'capped')
  const answers = [...(model.answers.get(kind) ?? [])].filter(([, field]) => field.type !== 'quantity')
  const [name, field] = pick([...leaves, ...answers], g)
  const ids = itemsOf(document)
    .filter((item) => fits(field, item.kind, model))
    .map((item) => item.id)
  return { set: `${id}.${name}`, to: anyEntry(field, ids, g) }
}

function fits(field: LeafField, kind: string, model: Model): boolean {
  const reference = field.type === 'list' ? field.of : field
  return reference.type === 'reference' && reference.to.some((name) => (model.kindsIn.get(name) ?? []).includes(kind))
}

function anyEntry(field: LeafField, ids: readonly string[], g: GeneratorValue): unknown {
  const value = anyValue(field, ids, g)
  const standing = pick(['stated', 'stated', 'stated', 'assumed', 'template'], g)
  return standing === 'stated' ? value : { value, standing }
}

function anyValue(field: LeafField, ids: readonly string[], g: GeneratorValue): unknown {
  switch (field.type) {
    case 'quantity': {
      const [low, high] = ranges[field.quantity] ?? [0, 1]
      const raw = low + (high - low) * g(fc.double, { min: 0, max: 1, noNaN: true })
      return writeQuantity(
        field.quantity === 'count' || field.quantity === 'date'
          ? Math.round(raw)
          : field.quantity === 'nominalSize'
            ? Math.round(raw * 4) / 4
            : raw,
        field.quantity,
        'ip',
      )
    }
    case 'choice':
      return pick([...Object.keys(field.choices), 'unknown'], g)
    case 'reference':
      return pick(['unknown', ...ids], g)
    case 'list':
      return g(fc.subarray, ['unknown', ...(field.of.type === 'choice' ? Object.keys(field.of.choices) : ids)])
    case 'text':
      return 'some words'
    default:
      return field satisfies never
  }
}

/** One of a list that is not empty. */
function pick<T>(items: readonly T[], g: GeneratorValue): T {
  const item = items[g(fc.nat, { max: items.length - 1 })]
  if (item === undefined) throw new Error('nothing to pick from')
  return item
}

interface Item {
  readonly id: string
  readonly kind: string
}

const sections = { components: undefined, lines: 'line', zones: 'zone', spaces: 'space', fixtures: 'fixture' } as const

function itemsOf(document: unknown): readonly Item[] {
  if (!isMap(document)) return []
  return Object.entries(sections).flatMap(([section, kind]) =>
    listAt(document[section], [section], problemList()).flatMap((raw) => {
      const item = isMap(raw) ? raw : {}
      const ids: readonly unknown[] = Array.isArray(item.id) ? item.id : [item.id]
      return ids.flatMap((id) => (typeof id === 'string' ? [{ id, kind: kind ?? String(item.kind) }] : []))
    }),
  )
}
