import { symlinkSync, truncateSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { findFiles, type FoundFiles } from '../../src/node/find-files.js'
import type { FilePlaces } from '../../src/node/search-places.js'
import type { WantedFile } from '../../src/node/wanted-file.js'
import { temporaryFolder } from './temporary-folder.js'

const overlay = (name: string): WantedFile => ({ kind: 'overlay', name, pointer: '/jurisdiction/authorities/0' })
const equipment = (name: string): WantedFile => ({ kind: 'equipment', name, pointer: '/components/0/use' })

function search(folder: string, wanted: readonly WantedFile[], places: Partial<FilePlaces> = {}): FoundFiles {
  return findFiles(wanted, {
    document: join(folder, 'job/house.yaml'),
    overlays: [],
    equipment: [],
    packageFolder: join(folder, 'package'),
    ...places,
  })
}

function opened(folder: string, found: FoundFiles): readonly string[] {
  return found.opened.map(
    ({ kind, name, path, from }) => `${kind} ${name}: ${path.replace(`${folder}/`, '')} (${from})`,
  )
}

describe('finding overlays and equipment', () => {
  it('looks beside the document, in its folders, in what is given, then in the package', () => {
    const names = ['job/o.yaml', 'job/overlays/o.yaml', 'towns/o.yaml', 'package/shared/overlays/o.yaml']
    const expected = [
      'job/o.yaml (beside)',
      'job/overlays/o.yaml (beside)',
      'towns/o.yaml (given)',
      'package/shared/overlays/o.yaml (package)',
    ]
    for (const [at, place] of expected.entries()) {
      const folder = temporaryFolder({
        'towns/other.yaml': '',
        ...Object.fromEntries(names.slice(at).map((name) => [name, `here: ${name}`])),
      })
      const found = search(folder, [overlay('o')], { overlays: [join(folder, 'towns')] })
      expect(opened(folder, found)).toEqual([`overlay o: ${place}`])
      expect(found.opened[0]?.text).toBe(`here: ${names[at]}`)
    }
  })

  it('finds equipment by the text after use, with or without its folder', () => {
    const folder = temporaryFolder({
      'job/equipment/b75.yaml': '',
      'job/pump.yaml': '',
      'makers/tank.yaml': '',
      'makers/north/valve.yaml': '',
      'package/shared/equipment/vent.yaml': '',
    })
    const wanted = ['equipment/b75', 'b75', 'equipment/pump', 'equipment/tank', 'north/valve', 'equipment/vent'].map(
      equipment,
    )
    expect(opened(folder, search(folder, wanted, { equipment: [join(folder, 'makers')] }))).toEqual([
      'equipment equipment/b75: job/equipment/b75.yaml (beside)',
      'equipment b75: job/equipment/b75.yaml (beside)',
      'equipment equipment/pump: job/pump.yaml (beside)',
      'equipment equipment/tank: makers/tank.yaml (given)',
      'equipment north/valve: makers/north/valve.yaml (given)',
      'equipment equipment/vent: package/shared/equipment/vent.yaml (package)',
    ])
  })

  it('tells what it did not find, once each', () => {
    const folder = temporaryFolder({ 'job/house.yaml': '' })
    expect(search(folder, [overlay('o'), equipment('equipment/e'), overlay('o')])).toEqual({
      opened: [],
      missing: [overlay('o'), equipment('equipment/e')],
      passedOver: [],
      problems: [],
    })
  })

  it('keeps overlays and equipment apart', () => {
    const folder = temporaryFolder({
      'job/overlays/e.yaml': '',
      'job/equipment/o.yaml': '',
      'package/shared/sources.yaml': '',
      'package/shared/overlays/x.yaml': '',
    })
    const wanted = [equipment('e'), overlay('o'), overlay('sources'), equipment('x')]
    expect(search(folder, wanted).missing).toEqual(wanted)
  })

  it('does not take the document for the overlay of its own name', () => {
    const folder = temporaryFolder({ 'job/harrowmere.yaml': '', 'package/shared/overlays/harrowmere.yaml': '' })
    const found = search(folder, [overlay('harrowmere')], { document: join(folder, 'job/harrowmere.yaml') })
    expect(opened(folder, found)).toEqual(['overlay harrowmere: package/shared/overlays/harrowmere.yaml (package)'])
  })

  it('opens given files, asked for or not, and tells which a nearer one replaced', () => {
    const folder = temporaryFolder({
      'job/near.yaml': '',
      'a/near.yml': '',
      'a/far.json': '',
      'a/draft.yaml': '',
      'a/b75.yaml': '',
    })
    const found = search(folder, [overlay('near'), overlay('far'), equipment('equipment/b75')], {
      overlays: ['near.yml', 'far.json', 'draft.yaml'].map((name) => join(folder, 'a', name)),
      equipment: [join(folder, 'a/b75.yaml')],
    })
    expect(opened(folder, found)).toEqual([
      'overlay near: job/near.yaml (beside)',
      'overlay far: a/far.json (given)',
      'equipment equipment/b75: a/b75.yaml (given)',
      'overlay draft: a/draft.yaml (given)',
    ])
    expect(found.passedOver).toEqual([join(folder, 'a/near.yml')])
    expect(found.problems).toEqual([])
  })

  it('looks only where it may, without a document and without the package', () => {
    const folder = temporaryFolder({ 'towns/o.yaml': '' })
    const found = findFiles([overlay('o'), overlay('p')], { overlays: [join(folder, 'towns')], equipment: [] })
    expect(opened(folder, found)).toEqual(['overlay o: towns/o.yaml (given)'])
    expect(found.missing).toEqual([overlay('p')])
  })
})

describe('names and places that are refused', () => {
  it.each(['../o', '/etc/passwd', 'a/b', 'o.yaml', '', '.', '..', 'o\u0000', 'C:o', 'x'.repeat(201)])(
    'takes %j for no authority',
    (name) => {
      const folder = temporaryFolder({ 'o.yaml': '', 'job/a/b.yaml': '', 'job/o.yaml': '' })
      const found = search(folder, [overlay(name)])
      expect(found.opened).toEqual([])
      expect(found.problems.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
        'unreadable-file-name /jurisdiction/authorities/0',
      ])
    },
  )

  it.each([
    '../secret',
    'equipment/../../secret',
    '/secret',
    'equipment//b75',
    'equipment\\b75',
    'equipment/b75.yaml',
    './b75',
    'b75/',
  ])('takes %j for no equipment', (name) => {
    const folder = temporaryFolder({ 'secret.yaml': '', 'job/equipment/b75.yaml': '', 'job/b75.yaml': '' })
    const found = search(folder, [equipment(name)])
    expect(found.opened).toEqual([])
    expect(found.problems.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
      'unreadable-file-name /components/0/use',
    ])
  })

  it('says what a name looks like, and the name that was meant', () => {
    expect(search(temporaryFolder({}), [equipment('equipment/b75.yaml')]).problems).toEqual([
      {
        code: 'unreadable-file-name',
        pointer: '/components/0/use',
        message: '"equipment/b75.yaml" is no name of an equipment file.',
        expected: 'letters, digits and dashes between single slashes, without an extension, as in "equipment/b75"',
        nearest: 'equipment/b75',
      },
    ])
  })

  it('follows no link out of a folder, but links inside it', () => {
    const folder = temporaryFolder({ 'secret.yaml': '', 'job/overlays/real.yaml': '', 'job/house.yaml': '' })
    symlinkSync(join(folder, 'secret.yaml'), join(folder, 'job/out.yaml'))
    symlinkSync(join(folder, 'job/overlays/real.yaml'), join(folder, 'job/alias.yaml'))
    const found = search(folder, [overlay('out'), overlay('alias')])
    expect(opened(folder, found)).toEqual(['overlay alias: job/alias.yaml (beside)'])
    expect(found.problems.map(({ code, message }) => `${code} ${message}`)).toEqual([
      'outside-folder "out" is a link that leads out of its folder: give the file itself on the command line.',
    ])
  })

  it('tells places that are not there and files that cannot be read', () => {
    const folder = temporaryFolder({ 'job/bad.yaml': Uint8Array.of(0xff), 'job/large.yaml': '' })
    truncateSync(join(folder, 'job/large.yaml'), 50_000_001)
    const found = search(folder, [overlay('bad'), overlay('large')], { overlays: [join(folder, 'nowhere')] })
    expect(found.problems.map(({ code, file }) => `${code} ${file?.replace(`${folder}/`, '')}`)).toEqual([
      'no-such-file nowhere',
      'not-text job/bad.yaml',
      'text-too-large job/large.yaml',
    ])
    expect([found.opened, found.missing]).toEqual([[], []])
  })

  it('passes over a folder that has the name of a file', () => {
    const folder = temporaryFolder({ 'job/o.yaml/x': '', 'package/shared/overlays/o.yaml': '' })
    expect(opened(folder, search(folder, [overlay('o')]))).toEqual([
      'overlay o: package/shared/overlays/o.yaml (package)',
    ])
  })
})
