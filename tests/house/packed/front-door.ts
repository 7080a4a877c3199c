import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { build } from 'tsup'
import { type Bench, demand } from './bench.js'

/** All of the front door, bundled for a browser with everything it depends on, stays small. */
export async function measureFrontDoor({ folder }: Bench): Promise<string> {
  const entry = join(folder, 'front.mjs')
  writeFileSync(entry, "import * as front from 'hydronic-rulebook'\nglobalThis.front = front\n")
  await build({
    config: false,
    entry: { front: entry },
    outDir: join(folder, 'bundle'),
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    noExternal: [/./],
    minify: true,
    silent: true,
  })
  const bytes = gzipSync(readFileSync(join(folder, 'bundle/front.js'))).length
  demand(bytes < 60_000, `The front door is ${bytes} bytes gzipped; 60,000 are allowed.`)
  return `front door: ${(bytes / 1000).toFixed(1)} kB gzipped, for a browser, dependencies included (below 60)`
}
