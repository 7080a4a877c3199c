import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { measureFrontDoor } from './packed/front-door.js'
import { install, pack } from './packed/install.js'
import { compileConsumer, measureDeclarations } from './packed/types.js'
import { openDoors, openSchemas, runCommand } from './packed/use.js'

const steps = [install, openDoors, openSchemas, runCommand, compileConsumer, measureDeclarations, measureFrontDoor]

const folder = mkdtempSync(join(tmpdir(), 'hydronic-rulebook-'))
try {
  const bench = await pack(folder)
  for (const step of steps) console.log(await step(bench))
} finally {
  rmSync(folder, { recursive: true })
}
