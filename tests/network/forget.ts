import type { House } from './build.js'

/** The house with one thing less said, chosen by two numbers. The boiler, which the questions start from, stays. */
export function forget(house: House, way: number, which: number): House {
  switch (way % 6) {
    case 0:
      return forgetPart(house, which)
    case 1:
      return { ...house, runs: house.runs.filter((_run, index) => index !== which % Math.max(1, house.runs.length)) }
    case 2:
      return {
        ...house,
        parts: house.parts.map((each, index) => (index === which % house.parts.length ? withoutCaps(each) : each)),
      }
    case 3:
      return {
        ...house,
        parts: house.parts.map((each, index) =>
          index === which % house.parts.length ? { ...each, values: {} } : each,
        ),
      }
    case 4:
      return forgetItem(house, which)
    default:
      return forgetCount(house, which)
  }
}

function forgetCount({ counts = {}, ...house }: House, which: number): House {
  const names = Object.keys(counts)
  const left = names.filter((_name, index) => index !== which % names.length)
  return { ...house, counts: Object.fromEntries(left.map((name) => [name, counts[name] ?? 0])) }
}

/** A component that goes unlisted leaves `unknown` in the paths. */
function forgetPart(house: House, which: number): House {
  const gone = house.parts[1 + (which % Math.max(1, house.parts.length - 1))]?.id
  if (gone === undefined) return house
  const runs = house.runs.map((each) => ({
    ...each,
    path: each.path.map((item) => (item.split('.')[0] === gone ? 'unknown' : item)),
  }))
  return { ...house, parts: house.parts.filter(({ id }) => id !== gone), runs }
}

function forgetItem(house: House, which: number): House {
  const run = house.runs[which % Math.max(1, house.runs.length)]
  if (run === undefined) return house
  const path = run.path.map((item, index) => (index === which % run.path.length ? 'unknown' : item))
  return { ...house, runs: house.runs.map((each) => (each === run ? { ...run, path } : each)) }
}

function withoutCaps({ id, kind, values }: House['parts'][number]): House['parts'][number] {
  return { id, kind, ...(values === undefined ? {} : { values }) }
}
