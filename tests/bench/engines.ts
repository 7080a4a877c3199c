import { checkInstallation } from '../../src/check-installation.js'
import { gatherFacts, type Facts } from '../../src/facts/index.js'
import { writeReport } from '../../src/findings/index.js'
import { judge, type Verdict } from '../../src/judging/index.js'
import { readEquipment, readInstallation } from '../../src/model/index.js'
import { larkspur, twoTowns } from './houses.js'
import { timesOf } from './measure.js'
import { openStockBook, runStock, stockRuns } from './stock-engine.js'
import { printTable, spokenTime, times } from './table.js'

/** The same rules on the same house: the core, our engine, and the untouched engine. */
export async function compareEngines(): Promise<void> {
  const { document, equipment } = larkspur
  const read = equipment.map((one) => readEquipment(one, twoTowns.model)).flatMap((one) => (one.ok ? [one.equipment] : []))
  const installation = readInstallation(document, twoTowns.model, read)
  const fresh = (): Facts => gatherFacts(installation, twoTowns.facts)
  const facts = fresh()
  const verdicts = judge(twoTowns, facts)
  const book = openStockBook(twoTowns)
  const ready = stockRuns(book, facts, 'before')

  const time = await timesOf({
    judging: () => judge(twoTowns, facts),
    gathering: () => judge(twoTowns, fresh()),
    reporting: () => report(fresh()),
    whole: () => checkInstallation(document, twoTowns, { equipment }),
    stockJudging: () => runStock(ready),
    stockGathering: () => runStock(stockRuns(book, fresh(), 'when asked')),
  })
  const title = `Larkspur Lane: ${installation.total} things, ${verdicts.length} verdicts from ${demandsIn(verdicts)} demands`
  const row = (name: string, spent: number, against: number): readonly string[] => [name, spokenTime(spent), times(spent / against)]
  printTable(title, [
    ['', 'one house', 'ratio'],
    row('core, facts known: judging', time.judging, time.judging),
    row('stock engine, facts known', time.stockJudging, time.judging),
    row('core after reading: facts and judging', time.gathering, time.gathering),
    row('core after reading: and the report', time.reporting, time.gathering),
    row('core with reading: the whole check', time.whole, time.gathering),
    row('stock engine, facts asked for', time.stockGathering, time.gathering),
  ])
}

function report(facts: Facts): unknown {
  const judgement = { facts, rulebook: twoTowns, verdicts: judge(twoTowns, facts), acceptances: [] }
  return writeReport({ ...judgement, document: larkspur.document })
}

function demandsIn(verdicts: readonly Verdict[]): number {
  return verdicts.reduce((sum, verdict) => sum + (verdict.type === 'judged' ? verdict.demands.length : 0), 0)
}
