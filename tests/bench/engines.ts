import { checkInstallation } from '../../src/check-installation.js'
import { gatherFacts, type Facts } from '../../src/facts/index.js'
import { writeReport } from '../../src/findings/index.js'
import { judge, type Verdict } from '../../src/judging/index.js'
import { readEquipment, readInstallation } from '../../src/model/index.js'
import { larkspur, twoTowns } from './houses.js'
import { timeOf, timeOfAwaited } from './measure.js'
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

  const judging = timeOf(() => judge(twoTowns, facts))
  const gathering = timeOf(() => judge(twoTowns, fresh()))
  const reporting = timeOf(() => report(fresh()))
  const whole = timeOf(() => checkInstallation(document, twoTowns, { equipment }))
  const stockJudging = await timeOfAwaited(() => runStock(ready))
  const stockGathering = await timeOfAwaited(() => runStock(stockRuns(book, fresh(), 'when asked')))

  printTable(`Larkspur Lane: ${installation.total} things, ${verdicts.length} verdicts from ${demandsIn(verdicts)} demands`, [
    ['', 'one house', 'times the core'],
    ['core, facts known: judging', spokenTime(judging), times(1)],
    ['core after reading: facts and judging', spokenTime(gathering), times(gathering / judging)],
    ['core after reading: facts, judging, report', spokenTime(reporting), times(reporting / judging)],
    ['core with reading: the whole check', spokenTime(whole), times(whole / judging)],
    ['stock engine, facts known', spokenTime(stockJudging), times(stockJudging / judging)],
    ['stock engine, facts asked for', spokenTime(stockGathering), times(stockGathering / judging)],
  ])
}

function report(facts: Facts): unknown {
  const judgement = { facts, rulebook: twoTowns, verdicts: judge(twoTowns, facts), acceptances: [] }
  return writeReport({ ...judgement, document: larkspur.document })
}

function demandsIn(verdicts: readonly Verdict[]): number {
  return verdicts.reduce((sum, verdict) => sum + (verdict.type === 'judged' ? verdict.demands.length : 0), 0)
}
