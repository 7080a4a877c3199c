/** A rule with one thing read wrongly. */
export interface Mutant {
  readonly name: string
  readonly data: unknown
}

type Data = Readonly<Record<string, unknown>>

const turned: Readonly<Record<string, string>> = {
  atLeast: 'atMost',
  atMost: 'atLeast',
  moreThan: 'lessThan',
  lessThan: 'moreThan',
  is: 'isNot',
  isNot: 'is',
  oneOf: 'noneOf',
  noneOf: 'oneOf',
  includes: 'excludes',
  excludes: 'includes',
}
const shifted: Readonly<Record<string, string>> = {
  atLeast: 'moreThan',
  moreThan: 'atLeast',
  atMost: 'lessThan',
  lessThan: 'atMost',
}
const severities = ['stop', 'must', 'should', 'advice'] as const

/** Readings that turn the sense of a rule: an operator reversed, a severity swapped, a demand dropped. */
export function coarseMutants(data: unknown): readonly Mutant[] {
  const rule = data as Data & { readonly demands: readonly Data[] }
  const severity = rule.demands.flatMap((demand, index) =>
    severities
      .filter((word) => word !== demand.severity)
      .map((word) => ({
        name: `demand ${String(demand.id)} at ${word}`,
        data: changed(rule, index, { ...demand, severity: word }),
      })),
  )
  const dropped = rule.demands.map((demand, index) => ({
    name: `without demand ${String(demand.id)}`,
    data: { ...rule, demands: rule.demands.toSpliced(index, 1) },
  }))
  return [...severity, ...dropped, ...operatorMutants(rule, turned), ...shortMutants(rule)]
}

/** Readings that are off only at the limit itself. */
export function fineMutants(data: unknown): readonly Mutant[] {
  return operatorMutants(data as Data, shifted)
}

function changed(rule: Data & { readonly demands: readonly Data[] }, index: number, demand: Data): Data {
  return { ...rule, demands: rule.demands.with(index, demand) }
}

function without(map: Data, key: string): Data {
  return Object.fromEntries(Object.entries(map).filter(([name]) => name !== key))
}

/** Every place where an operator is written, as key of a short comparison or as word of a long one. */
function operatorMutants(rule: Data, swaps: Readonly<Record<string, string>>): readonly Mutant[] {
  return placesIn(rule, []).flatMap(({ path, key, value }) => {
    const [byKey, byWord] = [swaps[key], key === 'operator' ? swaps[String(value)] : undefined]
    if (byWord !== undefined)
      return [
        { name: `${[...path, key].join('/')} ${byWord}`, data: at(rule, path, (map) => ({ ...map, [key]: byWord })) },
      ]
    return byKey === undefined || key === 'is'
      ? []
      : [
          {
            name: `${[...path, key].join('/')} ${byKey}`,
            data: at(rule, path, (map) => ({ ...without(map, key), [byKey]: value })),
          },
        ]
  })
}

/** `{ boiler.condensing: yes }` read as its opposite. */
function shortMutants(rule: Data): readonly Mutant[] {
  return placesIn(rule, []).flatMap(({ path, key, value }) => {
    const plain = key.includes('.') && (typeof value === 'string' || Array.isArray(value))
    return plain
      ? [
          {
            name: `${[...path, key].join('/')} turned`,
            data: at(rule, path, (map) => ({ ...map, [key]: { [Array.isArray(value) ? 'noneOf' : 'isNot']: value } })),
          },
        ]
      : []
  })
}

interface Place {
  readonly path: readonly (string | number)[]
  readonly key: string
  readonly value: unknown
}

function placesIn(value: unknown, path: readonly (string | number)[]): readonly Place[] {
  if (Array.isArray(value)) return value.flatMap((one: unknown, index) => placesIn(one, [...path, index]))
  if (typeof value !== 'object' || value === null) return []
  const told = ['given', 'examples', 'basis']
  return Object.entries(value).flatMap(([key, inner]) =>
    told.includes(key) ? [] : [{ path, key, value: inner as unknown }, ...placesIn(inner, [...path, key])],
  )
}

function at(value: unknown, [step, ...rest]: readonly (string | number)[], change: (map: Data) => Data): unknown {
  if (step === undefined) return change(value as Data)
  if (Array.isArray(value)) return value.map((one: unknown, index) => (index === step ? at(one, rest, change) : one))
  const map = value as Data
  return { ...map, [step]: at(map[step], rest, change) }
}
