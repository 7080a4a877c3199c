import { spawnSync } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { build } from 'tsup'
import { measurePackage } from './package-size.js'

mkdirSync('.tmp', { recursive: true })
const folder = mkdtempSync(join('.tmp', 'bench-'))
try {
  console.log(`Medians on Node ${process.versions.node}. Times differ from machine to machine, ratios hardly do.`)
  await measureBuilt()
  await measurePackage(folder)
} finally {
  rmSync(folder, { recursive: true })
}

/** What is measured is built first, as it is published: run from its sources it would be slowed by the translation. */
async function measureBuilt(): Promise<void> {
  const entry = { measured: fileURLToPath(import.meta.resolve('./measured.ts')) }
  await build({ config: false, entry, outDir: folder, format: 'esm', target: 'node20', treeshake: true, silent: true })
  const { status } = spawnSync(process.execPath, ['--expose-gc', join(folder, 'measured.js')], { stdio: 'inherit' })
  if (status !== 0) throw new Error(`measured.js ended with ${status ?? 'a signal'}`)
}
