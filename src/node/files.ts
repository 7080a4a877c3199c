import { readFileSync, statSync } from 'node:fs'
import type { Problem } from '../model/index.js'
import { largestText } from './read-text.js'

/** The text of a file, or why there is none. */
export type FileText =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly problems: readonly Problem[] }

/** What stands at a path; nothing where there is nothing, or nothing that may be looked at. */
export type AtPath = 'file' | 'folder' | 'something else' | undefined

/**
 * Reads a text file in UTF-8, with or without a byte order mark. Problems: `no-such-file`, `not-a-file`, `text-too-large`
 * (over 50 million bytes, told before reading), `not-text`, `unreadable-file`.
 */
export function readTextFile(path: string): FileText {
  const found = atPath(path)
  if (found === undefined) return refuse(path, 'no-such-file', 'There is no such file.')
  if (found !== 'file') return refuse(path, 'not-a-file', 'This is no file that can be read.')
  const bytes = bytesOf(path)
  if (bytes === 'too large')
    return refuse(path, 'text-too-large', `A file of more than ${largestText} bytes is not read.`)
  if (bytes === undefined) return refuse(path, 'unreadable-file', 'This file may not be read.')
  const text = decoded(bytes)
  return text === undefined ? refuse(path, 'not-text', 'This file is no text in UTF-8.') : { ok: true, text }
}

/** Tells files from folders without reading them. */
export function atPath(path: string): AtPath {
  const found = attempt(() => statSync(path))
  if (found === undefined) return undefined
  if (found.isFile()) return 'file'
  return found.isDirectory() ? 'folder' : 'something else'
}

/** What a step that may throw gives, or nothing. */
export function attempt<T>(step: () => T): T | undefined {
  try {
    return step()
  } catch {
    return undefined
  }
}

function bytesOf(path: string): Uint8Array | 'too large' | undefined {
  return attempt(() => (statSync(path).size > largestText ? 'too large' : readFileSync(path)))
}

function decoded(bytes: Uint8Array): string | undefined {
  return attempt(() => new TextDecoder('utf-8', { fatal: true }).decode(bytes))
}

function refuse(file: string, code: string, message: string): FileText {
  return { ok: false, problems: [{ code, pointer: '', message, file }] }
}
