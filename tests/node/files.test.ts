import { truncateSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { describe, expect, it } from 'vitest'
import { readTextFile } from '../../src/node/files.js'
import { packageFolder } from '../../src/node/package-folder.js'
import { temporaryFolder } from './temporary-folder.js'

function refusal(path: string): string | undefined {
  const read = readTextFile(path)
  return read.ok ? undefined : read.problems.map(({ code, message, file }) => `${file} ${code} ${message}`).join('\n')
}

describe('reading files', () => {
  it('gives the text of a file, with or without a byte order mark', () => {
    const folder = temporaryFolder({ 'a.yaml': 'a: 7 in\u00b2\n', 'b.yaml': '\uFEFFa: b\n', 'empty.yaml': '' })
    expect(readTextFile(join(folder, 'a.yaml'))).toEqual({ ok: true, text: 'a: 7 in\u00b2\n' })
    expect(readTextFile(join(folder, 'b.yaml'))).toEqual({ ok: true, text: 'a: b\n' })
    expect(readTextFile(join(folder, 'empty.yaml'))).toEqual({ ok: true, text: '' })
  })

  it('says what it cannot read', () => {
    const folder = temporaryFolder({
      'latin.yaml': Uint8Array.of(0x61, 0xb0),
      'wide.yaml': Uint8Array.of(0xff, 0xfe, 0x61, 0x00),
    })
    const at = (name: string) => join(folder, name)
    expect(refusal(at('nowhere.yaml'))).toBe(`${at('nowhere.yaml')} no-such-file There is no such file.`)
    expect(refusal(folder)).toBe(`${folder} not-a-file This is no file that can be read.`)
    expect(refusal(at('latin.yaml'))).toBe(`${at('latin.yaml')} not-text This file is no text in UTF-8.`)
    expect(refusal(at('wide.yaml'))).toBe(`${at('wide.yaml')} not-text This file is no text in UTF-8.`)
    expect(refusal(at('x'.repeat(5000)))).toBe(`${at('x'.repeat(5000))} no-such-file There is no such file.`)
    expect(refusal('a\u0000b')).toBe('a\u0000b no-such-file There is no such file.')
  })

  it('leaves a file of more than 50 million bytes closed', () => {
    const folder = temporaryFolder({ 'large.yaml': 'a' })
    truncateSync(join(folder, 'large.yaml'), 50_000_001)
    expect(refusal(join(folder, 'large.yaml'))).toBe(
      `${join(folder, 'large.yaml')} text-too-large A file of more than 50000000 bytes is not read.`,
    )
  })
})

describe('the folder of the package', () => {
  it('is found from the source', () => {
    expect(packageFolder()).toBe(join(import.meta.dirname, '..', '..'))
  })

  it.each([
    'src/node/package-folder.js',
    'dist/node/index.js',
    'dist/chunk-ABC.js',
    'node_modules/hydronic-rulebook/dist/node/main.js',
  ])('is found from %s', (module) => {
    const inner = module.startsWith('node_modules') ? 'node_modules/hydronic-rulebook' : '.'
    const folder = temporaryFolder({
      [join(inner, 'package.json')]: '{ "name": "hydronic-rulebook" }',
      [join(inner, 'dist/package.json')]: '{ "type": "module" }',
      [module]: '',
      ...(inner === '.' ? {} : { 'package.json': '{ "name": "host" }' }),
    })
    expect(packageFolder(pathToFileURL(join(folder, module)).href)).toBe(join(folder, inner))
  })

  it('is told to be lost where another package has swallowed the module', () => {
    const folder = temporaryFolder({
      'package.json': '{ "name": "host" }',
      'dist/package.json': 'no JSON',
      'dist/bundle.js': '',
    })
    const url = pathToFileURL(join(folder, 'dist/bundle.js')).href
    expect(() => packageFolder(url)).toThrow(
      `No folder above ${url} is the package hydronic-rulebook: give folders of overlays and equipment instead.`,
    )
  })
})
