import { describe, expect, it } from 'vitest'
import type { Problem } from '../../src/model/index.js'
import { withPositions, type Located } from '../../src/node/locate.js'
import { readText } from '../../src/node/read-text.js'

const text = [
  'name: Larkspur Lane',
  'components:',
  '  - { id: B1, setPresure: 30 psi }',
  '  - id: RV1',
  '    "a/b~c": [x,',
  '      "y"]',
  '',
].join('\n')

function located(): Located {
  const read = readText(text, 'house.yaml')
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return read
}

describe('where things stand', () => {
  it.each([
    ['', 1, 1],
    ['/name', 1, 7],
    ['/components', 3, 3],
    ['/components/0', 3, 5],
    ['/components/0/setPresure', 3, 27],
    ['/components/1/id', 4, 9],
    ['/components/1/a~1b~0c', 5, 14],
    ['/components/1/a~1b~0c/1', 6, 7],
  ])('finds the value of "%s"', (pointer, line, column) => {
    expect(located().locate(pointer)).toEqual({ line, column })
  })

  it('finds keys, and list items themselves', () => {
    expect(located().locateKey('/components/0/setPresure')).toEqual({ line: 3, column: 15 })
    expect(located().locateKey('/components/1/a~1b~0c')).toEqual({ line: 5, column: 5 })
    expect(located().locateKey('/components/1')).toEqual({ line: 4, column: 5 })
  })

  it.each([
    '/nothing',
    '/components/2',
    '/components/-',
    '/components/00',
    '/name/0',
    'name',
    '/components/length',
    '/toString',
  ])('finds nothing at "%s"', (pointer) => {
    expect(located().locate(pointer)).toBeUndefined()
    expect(located().locateKey(pointer)).toBeUndefined()
  })
})

describe('problems with positions', () => {
  const problem = (code: string, pointer: string): Problem => ({ code, pointer, message: 'm' })
  const placed = (code: string, pointer: string) => withPositions([problem(code, pointer)], 'house.yaml', located())[0]

  it('shows a wrong value at the value', () => {
    expect(placed('unreadable-quantity', '/components/0/setPresure')).toEqual({
      ...problem('unreadable-quantity', '/components/0/setPresure'),
      file: 'house.yaml',
      line: 3,
      column: 27,
    })
  })

  it('shows an unknown key at the key', () => {
    expect(placed('unknown-key', '/components/0/setPresure')).toMatchObject({ line: 3, column: 15 })
  })

  it('shows what is missing at the nearest thing around it', () => {
    expect(placed('missing-kind', '/components/1/kind/value')).toMatchObject({ line: 4, column: 5 })
    expect(placed('missing-version', '/installation')).toMatchObject({ line: 1, column: 1 })
    expect(placed('unknown-key', '/nothing')).toMatchObject({ line: 1, column: 1 })
  })

  it('keeps problems that name a file', () => {
    const told = { ...problem('x', '/name'), file: 'b75.yaml', line: 7, column: 2 }
    expect(withPositions([told], 'house.yaml', located())).toEqual([told])
  })

  it('gives the file alone where the source knows no place', () => {
    const nowhere = { locate: () => undefined, locateKey: () => undefined }
    expect(withPositions([problem('x', '/a/b')], 'house.yaml', nowhere)).toEqual([
      { ...problem('x', '/a/b'), file: 'house.yaml' },
    ])
  })
})
