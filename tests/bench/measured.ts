import { compareEngines } from './engines.js'
import { measureFlowGrowth } from './flow-growth.js'
import { measureGrowth } from './growth.js'
import { measureManyOfOne } from './many-of-one.js'
import { measureMemory } from './memory.js'
import { measureSizes } from './size-growth.js'
import { compareTowns } from './towns.js'

await compareEngines()
await measureGrowth()
await measureManyOfOne()
await measureFlowGrowth()
await measureSizes()
await compareTowns()
measureMemory()
