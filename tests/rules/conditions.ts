import { amountOf, anything, isDay, yearOf, type Range } from './amounts.js'

/** -1 no, 0 cannot be told, 1 yes. */
export type Truth = -1 | 0 | 1

/** A value as one of two things: text, a list of texts; undefined is not known. */
export type Said = string | readonly string[] | undefined
export type Ask = (path: string) => Said

type Data = Readonly<Record<string, unknown>>

export const least = (truths: readonly Truth[]): Truth => (truths.includes(-1) ? -1 : truths.includes(0) ? 0 : 1)
export const most = (truths: readonly Truth[]): Truth => (truths.includes(1) ? 1 : truths.includes(0) ? 0 : -1)
export const not = (truth: Truth): Truth => (truth === 0 ? 0 : truth === 1 ? -1 : 1)

/** Judges a condition straight from its YAML. */
export function holds(condition: unknown, ask: Ask): Truth {
  const map = condition as Data
  const [[key, value] = ['', undefined]] = Object.entries(map)
  if (key === 'all') return least((value as readonly unknown[]).map((one) => holds(one, ask)))
  if (key === 'any') return most((value as readonly unknown[]).map((one) => holds(one, ask)))
  if (key === 'not') return not(holds(value, ask))
  if ('operator' in map) return compare(String(map.fact), String(map.operator), map.value, ask)
  if (Array.isArray(value)) return compare(key, 'oneOf', value, ask)
  if (typeof value === 'string') return compare(key, 'is', value, ask)
  const [[operator, limit] = ['', undefined]] = Object.entries(value as Data)
  return compare(key, operator, limit, ask)
}

/** Judges one comparison straight from its YAML. */
export function compare(path: string, operator: string, limit: unknown, ask: Ask): Truth {
  const left = ask(path)
  switch (operator) {
    case 'is':
      return same(left, limit, ask)
    case 'isNot':
      return not(same(left, limit, ask))
    case 'oneOf':
      return among(left, listFor(limit, ask))
    case 'noneOf':
      return not(among(left, listFor(limit, ask)))
    case 'atLeast':
      return reaches(rangesFor(left, limit, ask))
    case 'atMost':
      return reaches(rangesFor(left, limit, ask).reverse())
    case 'moreThan':
      return not(reaches(rangesFor(left, limit, ask).reverse()))
    case 'lessThan':
      return not(reaches(rangesFor(left, limit, ask)))
    case 'between':
      return least(
        (limit as readonly unknown[]).map((end, index) => compare(path, index === 0 ? 'atLeast' : 'atMost', end, ask)),
      )
    case 'includes':
      return among(String(limit), Array.isArray(left) ? (left as readonly string[]) : undefined)
    case 'excludes':
      return not(among(String(limit), Array.isArray(left) ? (left as readonly string[]) : undefined))
    default:
      throw new Error(`the book has no operator "${operator}"`)
  }
}

function same(left: Said, limit: unknown, ask: Ask): Truth {
  const right = typeof limit === 'string' ? limit : undefined
  if (typeof left === 'string' && right !== undefined && amountOf(right) === undefined) return left === right ? 1 : -1
  const ranges = rangesFor(left, limit, ask)
  return least([reaches(ranges), reaches(ranges.toReversed())])
}

function listFor(limit: unknown, ask: Ask): readonly string[] | undefined {
  const said = Array.isArray(limit) ? (limit as readonly string[]) : ask(String((limit as Data).fact))
  return typeof said === 'string' ? undefined : said
}

function among(word: Said, list: readonly string[] | undefined): Truth {
  if (typeof word !== 'string' || list === undefined) return 0
  if (list.includes(word)) return 1
  return list.includes('unknown') ? 0 : -1
}

function reaches([left = anything, right = anything]: readonly Range[]): Truth {
  const slack =
    1e-9 * Math.max(...[left.low, left.high, right.low, right.high].filter(Number.isFinite).map(Math.abs), 0)
  if (left.low >= right.high - slack) return 1
  return left.high < right.low - slack ? -1 : 0
}

function rangesFor(left: Said, limit: unknown, ask: Ask): Range[] {
  const asDay = typeof limit === 'string' && isDay(limit)
  return [rangeOf(left, asDay), valueOf(limit, ask)]
}

function rangeOf(said: Said, asDay: boolean): Range {
  if (typeof said !== 'string') return anything
  return (asDay ? yearOf(said) : undefined) ?? amountOf(said) ?? anything
}

/** A value straight from its YAML. */
function valueOf(value: unknown, ask: Ask): Range {
  if (typeof value === 'string') return rangeOf(value, false)
  const map = value as Data
  if ('fact' in map) return rangeOf(ask(String(map.fact)), false)
  if ('times' in map) return scaled(Number(map.times), valueOf(map.of, ask))
  const [[key, items] = ['', []]] = Object.entries(map)
  const ranges = (items as readonly unknown[]).map((item) => valueOf(item, ask))
  const combine = {
    sum: (ends: readonly number[]) => ends.reduce((a, b) => a + b, 0),
    largest: (ends: readonly number[]) => Math.max(...ends),
    smallest: (ends: readonly number[]) => Math.min(...ends),
  }[key]
  if (combine === undefined) throw new Error(`the book has no value "${key}"`)
  return { low: combine(ranges.map(({ low }) => low)), high: combine(ranges.map(({ high }) => high)) }
}

function scaled(factor: number, { low, high }: Range): Range {
  return factor < 0 ? { low: high * factor, high: low * factor } : { low: low * factor, high: high * factor }
}
