import { describe, expect, it } from 'vitest'
import { lintRuleSet } from '../../src/authoring/index.js'
import { base } from '../../src/base.js'
import { isMap, printProblem, readEquipment, tryReadInstallation, type Problem } from '../../src/model/index.js'
import { readText } from '../../src/node/index.js'
import { tryOpenRulebook } from '../../src/rulebook/index.js'
import { openFile, openTowns } from '../houses/open-house.js'
import { blocksOf, fileOf, type Block } from './pages.js'

const { model } = openTowns()
const sources = { file: 'shared/sources.yaml', data: openFile('shared/sources.yaml') }

/** How a block is read, by its first key. */
const readers: Readonly<Record<string, (data: unknown, block: Block) => readonly Problem[]>> = {
  installation: (data) => problemsOf(tryReadInstallation(data, model)),
  equipment: (data) => problemsOf(readEquipment(data, model)),
  overlay: (data) => {
    const read = tryOpenRulebook({ ruleSets: [base], overlays: [isMap(data) ? data : {}] })
    return read.ok ? read.rulebook.warnings : read.problems
  },
  title: (data, block) => {
    const file = fileOf(block) ?? 'rules/some-topic/some-rule.yaml'
    return lintRuleSet({ rules: [{ file, data }], sources, plugins: [base] }).filter((problem) => problem.file === file)
  },
}

describe.each(blocksOf('yaml'))('the block %s', (_name, block) => {
  const read = readText(block.text, block.page)
  const first = read.ok && isMap(read.value) ? (Object.keys(read.value)[0] ?? '') : ''

  it('is an installation, an equipment file, an overlay or a rule', () => {
    expect(problemsOf(read).map(printProblem)).toEqual([])
    expect(Object.keys(readers)).toContain(first)
  })

  it('can be read as it stands', () => {
    const problems = read.ok ? readers[first]?.(read.value, block) : read.problems
    expect(problems?.map(printProblem)).toEqual([])
  })
})

function problemsOf(read: { readonly ok: boolean; readonly problems?: readonly Problem[] }): readonly Problem[] {
  return read.problems ?? []
}
