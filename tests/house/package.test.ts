import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import tsupConfig from '../../tsup.config.js'

const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as {
  readonly bin: Readonly<Record<string, string>>
  readonly exports: Readonly<Record<string, string | { readonly types: string; readonly default: string }>>
  readonly files: readonly string[]
  readonly scripts: Readonly<Record<string, string>>
  readonly sideEffects: boolean
}
const built = Object.entries(manifest.exports).flatMap(([door, target]) =>
  typeof target === 'string' ? [] : [{ door, ...target }],
)
const entries = Object.entries((tsupConfig as { readonly entry: Readonly<Record<string, string>> }).entry)

describe('the package', () => {
  it.each(built)('builds the door $door from a source', ({ types, default: file }) => {
    const name = file.replace(/^[.][/]dist[/]/, '').replace(/[.]js$/, '')
    const source = entries.find(([entry]) => entry === name)?.[1]
    expect(source).toBe(`src/${name}.ts`)
    expect(existsSync(source ?? '')).toBe(true)
    expect(types).toBe(file.replace(/[.]js$/, '.d.ts'))
  })

  it('builds its command from a source that starts itself', () => {
    expect(manifest.bin).toEqual({ 'hydronic-rulebook': 'dist/node/main.js' })
    expect(entries).toContainEqual(['node/main', 'src/node/main.ts'])
    expect(readFileSync('src/node/main.ts', 'utf8').split('\n')[0]).toBe('#!/usr/bin/env node')
  })

  it('packs only what is there', () => {
    expect(manifest.files.filter((path) => path !== 'dist' && !existsSync(path))).toEqual([])
  })

  it('may be trimmed by bundlers and runs nothing when installed', () => {
    expect(manifest.sideEffects).toBe(false)
    expect(Object.keys(manifest.scripts).filter((name) => /^(pre|post)?(install|prepare)$/.test(name))).toEqual([])
  })
})
