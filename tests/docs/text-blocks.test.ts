import { describe, expect, it } from 'vitest'
import { run } from '../node/commands/run.js'
import { temporaryFolder } from '../node/temporary-folder.js'
import { blocksIn, blocksOf } from './pages.js'

const demo = ['check', 'seeds/coopers-stair.yaml', '--exit-on', 'never']
const sizes = ['size', 'seeds/larkspur-lane.yaml']
const misspelled = 'installation: 1\ncomponents:\n  - { id: B1, kind: boiler, mapw: 30 psi }\n'

describe('what the pages show of the program', () => {
  it.each(blocksOf('text'))('is what it prints: %s', async (_name, { page, text }) => {
    const printed = [
      (await run(demo)).out,
      (await run(sizes)).out,
      ...(await checksOf([misspelled, ...documentsOf(page)])),
    ].map(trimmed)
    for (const passage of trimmed(text).split('\n...\n')) {
      expect(printed.some((output) => output.includes(passage.trim()))).toBe(true)
    }
  })

  it('comes from a demo that ends with 0 and finds the house failing', async () => {
    const { code, out } = await run(demo)
    expect(code).toBe(0)
    expect(out).toMatch(/^NOT READY: [1-9]\d* wrong/m)
  })
})

function documentsOf(page: string): readonly string[] {
  return blocksIn(page).flatMap(({ language, text }) =>
    language === 'yaml' && text.startsWith('installation:') ? [text] : [],
  )
}

/** What checks print of documents, each in a file called house.yaml. */
function checksOf(documents: readonly string[]): Promise<readonly string[]> {
  return Promise.all(
    documents.map(async (document) => {
      const folder = temporaryFolder({ 'house.yaml': document })
      const { out, err } = await run(['check', `${folder}/house.yaml`])
      return `${out}\n${err.replaceAll(`${folder}/`, '')}`
    }),
  )
}

function trimmed(text: string): string {
  return text
    .split('\n')
    .map((line) => line.trim())
    .join('\n')
}
