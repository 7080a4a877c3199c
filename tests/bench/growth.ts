import { gatherFacts, type Facts } from '../../src/facts/index.js'
import { writeReport } from '../../src/findings/index.js'
import { judge } from '../../src/judging/index.js'
import { readInstallation } from '../../src/model/index.js'
import { bigHouse } from './big-house.js'
import { twoTowns } from './houses.js'
import { timesOf } from './measure.js'
import { printTable, spokenTime } from './table.js'

const sizes = [10, 100, 1_000, 10_000]
const steps = ['reading', 'facts and judging', 'report'] as const
type Step = (typeof steps)[number]

/** How the time grows with the house: 1.00 is in step with it, 2.00 with its square. */
export async function measureGrowth(): Promise<void> {
  const measured: { readonly size: number; readonly times: Readonly<Record<Step, number>> }[] = []
  for (const size of sizes) measured.push({ size, times: await timesFor(size) })
  const rows = steps.map((step) => [
    step,
    ...measured.map(({ size, times }) => spokenTime(times[step] / size)),
    exponent(measured.map(({ size, times }) => ({ size, time: times[step] }))),
  ])
  printTable('A house of so many components, time for each of them', [
    ['', ...sizes.map(String), 'exponent, of the last step'],
    ...rows,
  ])
}

function timesFor(size: number): Promise<Readonly<Record<Step, number>>> {
  const document = bigHouse(size)
  const installation = readInstallation(document, twoTowns.model)
  const fresh = (): Facts => gatherFacts(installation, twoTowns.facts)
  const facts = fresh()
  const verdicts = judge(twoTowns, facts)
  return timesOf({
    reading: () => readInstallation(document, twoTowns.model),
    'facts and judging': () => judge(twoTowns, fresh()),
    report: () => writeReport({ facts, rulebook: twoTowns, verdicts, document }),
  })
}

/** Over all sizes, and over the last step, where what grows faster than the house comes out. */
function exponent(points: readonly { readonly size: number; readonly time: number }[]): string {
  const [first, last, before] = [points[0], points.at(-1), points.at(-2)]
  if (first === undefined || last === undefined || before === undefined) return ''
  return `${slope(first, last).toFixed(2)}, ${slope(before, last).toFixed(2)}`
}

function slope(
  a: { readonly size: number; readonly time: number },
  b: { readonly size: number; readonly time: number },
): number {
  return Math.log(b.time / a.time) / Math.log(b.size / a.size)
}
