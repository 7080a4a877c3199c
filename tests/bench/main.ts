import { compareEngines } from './engines.js'
import { measureGrowth } from './growth.js'
import { measureMemory } from './memory.js'
import { measurePackage } from './package-size.js'
import { compareTowns } from './towns.js'

console.log(`Medians of several batches on Node ${process.versions.node}. Times differ from machine to machine; ratios hardly do.`)
await compareEngines()
measureGrowth()
compareTowns()
measureMemory()
await measurePackage()
