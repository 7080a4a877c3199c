import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { base } from '../../src/base.js'
import { readText } from '../../src/node/read-text.js'
import { openRulebook, type Rulebook } from '../../src/rulebook/index.js'

const root = fileURLToPath(new URL('../../', import.meta.url))

/** A YAML file of the project as written data, all scalars text. */
export function openFile(path: string): unknown {
  const read = readText(readFileSync(join(root, path), 'utf8'), path)
  if (!read.ok)
    throw new Error(
      read.problems.map((problem) => `${problem.file ?? ''}:${problem.line ?? ''} ${problem.message}`).join('\n'),
    )
  return read.value
}

export const seedNames = ['minimal', 'first-visit', 'larkspur-lane', 'coopers-stair'] as const

export function openSeed(name: (typeof seedNames)[number]): unknown {
  return openFile(`seeds/${name}.yaml`)
}

/** Every equipment file that the package ships. */
export function openEquipment(): readonly unknown[] {
  const files = readdirSync(join(root, 'shared/equipment')).filter((file) => file.endsWith('.yaml'))
  return files.sort().map((file) => openFile(`shared/equipment/${file}`))
}

/** The base rules with the towns that are named. */
export function openTowns(...towns: readonly string[]): Rulebook {
  return openRulebook({
    ruleSets: [base],
    overlays: towns.map((town) => ({
      file: `shared/overlays/${town}.yaml`,
      data: openFile(`shared/overlays/${town}.yaml`),
    })),
  })
}
