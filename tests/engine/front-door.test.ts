import { execFileSync } from 'node:child_process'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** Files of json-rules-engine that a process of its own has loaded after it imported a door. */
function loadedBy(door: string): { readonly files: readonly string[]; readonly told: string } {
  const code = `
    import { createRequire } from 'node:module'
    await import(${JSON.stringify(new URL(door, new URL('../../src/', import.meta.url)).href)})
    const files = Object.keys(createRequire(import.meta.url).cache).filter((file) => /json-rules-engine|jsonpath/.test(file))
    console.log(JSON.stringify(files))
  `
  const told = execFileSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', code], {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, DEBUG: 'json-rules-engine' },
  })
  return { files: JSON.parse(told) as readonly string[], told }
}

describe('trap 14: the engine that prints facts', () => {
  it('is not loaded by the front door, nor by the base rule set', () => {
    expect(loadedBy('index.ts').files).toEqual([])
    expect(loadedBy('base.ts').files).toEqual([])
  })

  it('is loaded by its own door', () => {
    expect(loadedBy('engine/index.ts').files.length).toBeGreaterThan(5)
  })
})

describe('trap 16: imports of json-rules-engine', () => {
  const files = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith('.ts'),
  )
  const imports = files.flatMap((file) =>
    [
      ...readFileSync(join(root, 'src', file), 'utf8').matchAll(
        /^(?:import|export) (.*?) from 'json-rules-engine'/gmsu,
      ),
    ].map((found) => ({ file, what: found[1] ?? '' })),
  )

  it('stand in one room', () => {
    expect(imports.length).toBeGreaterThan(5)
    expect(imports.filter(({ file }) => !/^engine[\\/]/u.test(file))).toEqual([])
  })

  it('take things by their names', () => {
    expect(imports.filter(({ what }) => !/^(?:type )?\{/u.test(what) || /\bdefault\b/u.test(what))).toEqual([])
  })
})
