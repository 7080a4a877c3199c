import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { onTestFinished } from 'vitest'

/** A folder with these files that is gone after the test. */
export function temporaryFolder(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'hydronic-')))
  onTestFinished(() => rmSync(folder, { recursive: true }))
  for (const [name, content] of Object.entries(files)) write(join(folder, name), content)
  return folder
}

function write(path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true })
  writeFileSync(path, content)
}
