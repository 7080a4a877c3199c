import { readdirSync, readFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { describe, expect, it } from 'vitest'

const found = readdirSync('src', { recursive: true, withFileTypes: true })
const lengths = found
  .filter((item) => item.isFile() && item.name.endsWith('.ts'))
  .map((item) => readFileSync(join(item.parentPath, item.name), 'utf8').split('\n').length - 1)
  .toSorted((one, other) => one - other)

describe('the files under src', () => {
  it('are short: half of them below 80 lines', () => {
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThan(80)
  })

  it('lie in no folder named for nothing', () => {
    const folders = found.filter((item) => item.isDirectory()).map((item) => basename(item.name))
    expect(folders.filter((name) => /^(utils|helpers|common|core|lib|types)$/.test(name))).toEqual([])
  })
})
