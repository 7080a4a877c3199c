import { checkRecord } from './check-records.js'
import { collectAdapters } from './collect-adapters.js'
import { contradictions } from './contradictions.js'
import { readRecords } from './read-records.js'
import { isFailure, reportLines } from './report.js'

// Holds the library against values that others published; 1 when one of them is missed.
const adapters = await collectAdapters()
const checked = readRecords().map((record) => checkRecord(record, { adapters, contradictions }))
console.log(reportLines(checked).join('\n'))
process.exitCode = checked.some(isFailure) ? 1 : 0
