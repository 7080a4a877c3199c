import { isMap, leavesOf, textOf, type LeafField, type Model } from '../../src/model/index.js'
import { parseQuantity, writeQuantity } from '../../src/units/index.js'

/** The same document with every amount in SI units, and asking for SI. */
export function inSi(house: unknown, model: Model): unknown {
  if (!isMap(house)) return house
  const sections = Object.fromEntries(
    Object.entries(house).map(([section, value]) => {
      const kind = model.kinds.get(section)
      if (kind?.section === 'singleton') return [section, fieldsInSi(value, leavesOf(kind.fields))]
      return [section, Array.isArray(value) ? value.map((item: unknown) => thingInSi(item, section, model)) : value]
    }),
  )
  return { ...sections, units: 'si' }
}

const alone: Readonly<Record<string, string>> = {
  lines: 'line',
  zones: 'zone',
  spaces: 'space',
  fixtures: 'fixture',
  readings: 'reading',
  tests: 'test',
  states: 'state',
  evidence: 'evidence',
}

function thingInSi(item: unknown, section: string, model: Model): unknown {
  if (!isMap(item)) return item
  const name = textOf(item.kind) ?? alone[section] ?? ''
  const kind = model.kinds.get(name)
  if (kind === undefined) return item
  const fields = new Map([...(model.leaves.get(name) ?? []), ...(model.answers.get(name) ?? [])])
  const own = fieldsInSi(item, fields)
  if (!isMap(own)) return own
  const parts = Object.entries(kind.parts).flatMap(([list, part]) =>
    own[list] === undefined ? [] : [[list, partsInSi(own[list], leavesOf(part.fields))]],
  )
  return { ...own, ...Object.fromEntries(parts) }
}

function partsInSi(raw: unknown, fields: ReadonlyMap<string, LeafField>): unknown {
  if (Array.isArray(raw)) return raw.map((item) => fieldsInSi(item, fields))
  return isMap(raw) && Array.isArray(raw.list)
    ? { ...raw, list: raw.list.map((item: unknown) => fieldsInSi(item, fields)) }
    : raw
}

function fieldsInSi(raw: unknown, fields: ReadonlyMap<string, LeafField>, prefix = ''): unknown {
  if (!isMap(raw)) return raw
  return Object.fromEntries(
    Object.entries(raw).map(([name, value]) => {
      const field = fields.get(`${prefix}${name}`)
      if (field?.type === 'quantity') return [name, amountInSi(value, field)]
      const grouped = [...fields.keys()].some((key) => key.startsWith(`${prefix}${name}.`))
      return [name, grouped ? fieldsInSi(value, fields, `${prefix}${name}.`) : value]
    }),
  )
}

function amountInSi(value: unknown, field: LeafField & { readonly type: 'quantity' }): unknown {
  if (isMap(value))
    return {
      ...value,
      value: amountInSi(value.value, field),
      ...(value.within === undefined ? {} : { within: amountInSi(value.within, field) }),
    }
  const text = textOf(value)
  const parsed = text === undefined || text === 'unknown' ? undefined : parseQuantity(text, field.quantity)
  if (parsed?.ok !== true || parsed.low !== parsed.high) return value
  return writeQuantity(parsed.low, field.quantity, 'si')
}
