import { existsSync, readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { exitCodes } from '../../src/node/index.js'
import { severities } from '../../src/rulebook/index.js'
import { blocksIn, pages, root, textOf } from './pages.js'

const readme = textOf('README.md')
const developers = textOf('DEVELOPERS.md')
const foldersIn = (folder: string): readonly string[] =>
  readdirSync(join(root, folder), { withFileTypes: true }).flatMap((item) => (item.isDirectory() ? [item.name] : []))

describe.each(pages)('the page %s', (page) => {
  it('leads to what is there', () => {
    const links = [...textOf(page).matchAll(/\]\(([^)#]+)[^)]*\)/g)].map((match) => match[1] ?? '')
    const lost = links.filter((link) => !link.startsWith('http') && !existsSync(join(root, dirname(page), link)))
    expect(lost).toEqual([])
  })

  it('has only blocks that a test reads', () => {
    const languages = blocksIn(page).map(({ language }) => language)
    expect(languages.filter((language) => !['ts', 'yaml', 'sh', 'text'].includes(language))).toEqual([])
  })
})

describe('the README', () => {
  it('begins with the job', () => {
    const [, job = ''] = readme.split('\n\n')
    for (const word of ['old boiler', 'will it work', 'is it safe', 'this town', 'nobody know'])
      expect(job).toContain(word)
  })

  it('names every door of the package', async () => {
    const { default: manifest } = (await import('../../package.json', { with: { type: 'json' } })) as {
      readonly default: { readonly exports: Readonly<Record<string, unknown>> }
    }
    const doors = Object.keys(manifest.exports).filter((door) => door !== './package.json')
    const lost = doors.filter((door) => !readme.includes(`| \`${door.replace('.', 'hydronic-rulebook')}\` |`))
    expect(lost).toEqual([])
  })

  it('tells every exit code and severity', () => {
    for (const code of Object.values(exitCodes)) expect(readme).toContain(`| ${code} | `)
    for (const severity of severities) expect(readme).toContain(`\`${severity}\``)
  })

  it('names every topic of the rules', () => {
    const [, today = ''] = readme.split('## What it asks today')
    expect(
      foldersIn('rules').filter((topic) => !today.includes(topic.replace('-', ' ')) && !today.includes(topic)),
    ).toEqual([])
  })

  it('warns of what can kill', () => {
    for (const word of ['Gas', 'Carbon monoxide', 'Pressure', 'Scalding']) expect(readme).toContain(`**${word}.**`)
    expect(readme).toContain('no approval')
  })
})

describe('DEVELOPERS.md', () => {
  it('maps every room', () => {
    const [map = ''] = developers.split('Directly under')
    const mapped = [...map.matchAll(/^\| `(\w+)\/` \|/gm)].map((match) => match[1] ?? '')
    expect(mapped.toSorted()).toEqual(foldersIn('src').toSorted())
  })

  it('names only files that are there', () => {
    const [, walk = ''] = developers.split('## The walk')
    const named = [...(walk.split('## Fences')[0] ?? '').matchAll(/`(\w+\/[\w/-]+[.]ts)`/g)].map(
      (match) => match[1] ?? '',
    )
    expect(named.length).toBeGreaterThan(8)
    expect(named.filter((path) => !existsSync(join(root, 'src', path)))).toEqual([])
  })
})
