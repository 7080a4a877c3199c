import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { packageName } from '../../src/findings/index.js'

it('reports carry the name and version of the package', () => {
  const { name, version } = JSON.parse(readFileSync('package.json', 'utf8'))
  expect(packageName).toBe(`${name} ${version}`)
})
