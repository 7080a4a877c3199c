import { mkdtempSync, writeFileSync, mkdirSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { runCommandLine, type CommandLineIo, type ExitCode } from '../../../src/node/index.js'

export interface Ran {
  readonly code: ExitCode
  readonly out: string
  readonly err: string
}

export const today = '2025-09-20'

/** Runs a command in this process and gathers what it prints. */
export async function run(argv: readonly string[], io: Partial<CommandLineIo> = {}): Promise<Ran> {
  const out: string[] = []
  const err: string[] = []
  const code = await runCommandLine(argv, {
    out: (text) => void out.push(text),
    err: (text) => void err.push(text),
    color: false,
    today,
    ...io,
  })
  return { code, out: out.join(''), err: err.join('') }
}

/** A folder of its own with files in it; gives their paths by name. */
export function filesIn(files: Readonly<Record<string, string>>): (name: string) => string {
  const folder = mkdtempSync(join(tmpdir(), 'rulebook-'))
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), text)
  }
  return (name) => join(folder, name)
}

export const longestLine = (text: string): number => Math.max(...text.split('\n').map((line) => line.length))
