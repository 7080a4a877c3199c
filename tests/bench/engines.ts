import { checkInstallation } from '../../src/check-installation.js'
import { gatherFacts } from '../../src/facts/index.js'
import { writeReport } from '../../src/findings/index.js'
import { judge } from '../../src/judging/index.js'
import { readEquipment, readInstallation, type Installation } from '../../src/model/index.js'
import type { Rulebook } from '../../src/rulebook/index.js'
import { openTowns } from '../houses/open-house.js'
import { larkspur } from './houses.js'
import { timeOf, timeOfAwaited } from './measure.js'
import { runStock, stockBook, stockRuns, withFacts, withValues } from './stock-engine.js'
import { printTable, spokenTime, times } from './table.js'

/** The same rules on the same house: the core, our engine, and the untouched engine. */
export async function compareEngines(): Promise<void> {
  const rulebook = openTowns('harrowmere', 'saltmarrow')
  const installation = readLarkspur(rulebook)
  const facts = gatherFacts(installation, rulebook.facts)
  const verdicts = judge(rulebook, facts)
  const runs = stockRuns(stockBook(rulebook), rulebook, facts)
  const fresh = (): ReturnType<typeof gatherFacts> => gatherFacts(installation, rulebook.facts)

  const judged = timeOf(() => judge(rulebook, facts))
  const cold = timeOf(() => judge(rulebook, fresh()))
  const told = timeOf(() => {
    const gathered = fresh()
    return writeReport({ facts: gathered, rulebook, verdicts: judge(rulebook, gathered), acceptances: [], document: larkspur.document })
  })
  const whole = timeOf(() => checkInstallation(larkspur.document, rulebook, { equipment: larkspur.equipment }))
  const values = withValues(runs)
  const stockValues = await timeOfAwaited(() => runStock(values))
  const stockCold = await timeOfAwaited(() => runStock(withFacts(stockRunsOf(runs, rulebook, fresh()))))

  const demands = verdicts.reduce((sum, verdict) => sum + (verdict.type === 'judged' ? verdict.demands.length : 0), 0)
  printTable(`The larkspur house: ${installation.total} things, ${verdicts.length} verdicts, ${demands} demands judged`, [
    ['', 'a house', 'to the core'],
    ['core: judging, facts known', spokenTime(judged), times(1)],
    ['core: gathering facts and judging', spokenTime(cold), times(cold / judged)],
    ['core: the same, and the report', spokenTime(told), times(told / judged)],
    ['core: reading, facts, judging, report', spokenTime(whole), times(whole / judged)],
    ['stock engine: values handed in', spokenTime(stockValues), times(stockValues / judged)],
    ['stock engine: facts asked as it goes', spokenTime(stockCold), times(stockCold / judged)],
    ['', '', `${times(stockCold / cold)} of the core with facts`],
  ])
}
