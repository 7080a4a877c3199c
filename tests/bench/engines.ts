import { checkInstallation } from '../../src/check-installation.js'
import { RulebookEngine } from '../../src/engine/index.js'
import { gatherFacts, type Facts } from '../../src/facts/index.js'
import { writeReport } from '../../src/findings/index.js'
import { judge, type JudgedDemand, type Verdict } from '../../src/judging/index.js'
import { readInstallation, readShelf } from '../../src/model/index.js'
import { larkspur, twoTowns } from './houses.js'
import { timesOf } from './measure.js'
import { openStockBook, runStock, stockRuns } from './stock-engine.js'
import { printTable, spokenTime, times } from './table.js'

/** The same rules on the same house: the core, our engine, and the untouched engine. */
export async function compareEngines(): Promise<void> {
  const { document, equipment } = larkspur
  const shelf = readShelf(equipment, twoTowns.model)
  const installation = readInstallation(document, twoTowns.model, shelf)
  const fresh = (): Facts => gatherFacts(installation, twoTowns.facts)
  const facts = fresh()
  const verdicts = judge(twoTowns, facts)
  const book = openStockBook(twoTowns)
  const ready = stockRuns(book, facts, 'before')
  const engine = new RulebookEngine(twoTowns)

  const time = await timesOf({
    judging: () => judge(twoTowns, facts),
    gathering: () => judge(twoTowns, fresh()),
    reporting: () => report(fresh()),
    whole: () => checkInstallation(document, twoTowns, { equipment }),
    carried: () => engine.check(document, { equipment }),
    stockJudging: () => runStock(ready),
    stockGathering: () => runStock(stockRuns(book, fresh(), 'when asked')),
  })
  const demands = demandsIn(verdicts)
  const open = demands.filter(({ verdict }) => verdict === 'undecided').length
  const kept = demands.filter(({ verdict }) => verdict === 'pass' || verdict === 'not-applicable').length
  const title = `Larkspur Lane: ${installation.total} things, ${verdicts.length} verdicts from ${demands.length} demands`
  console.log(
    `\nThe core keeps ${kept} demands and cannot tell ${open}; the stock engine keeps ${await runStock(ready)}.`,
  )
  const row = (name: string, spent: number, against: number): readonly string[] => [
    name,
    spokenTime(spent),
    times(spent / against),
  ]
  printTable(title, [
    ['', 'one house', 'ratio'],
    row('core, facts known: judging', time.judging, time.judging),
    row('stock engine, facts known', time.stockJudging, time.judging),
    row('core after reading: facts and judging', time.gathering, time.gathering),
    row('core after reading: and the report', time.reporting, time.gathering),
    row('stock engine, facts asked for', time.stockGathering, time.gathering),
    row('core with reading: the whole check', time.whole, time.whole),
    row('our engine with reading: the same check', time.carried, time.whole),
  ])
}

function report(facts: Facts): unknown {
  const judgement = { facts, rulebook: twoTowns, verdicts: judge(twoTowns, facts) }
  return writeReport({ ...judgement, document: larkspur.document })
}

function demandsIn(verdicts: readonly Verdict[]): readonly JudgedDemand[] {
  return verdicts.flatMap((verdict) => (verdict.type === 'judged' ? verdict.demands : []))
}
