import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../../', import.meta.url))

/** A fenced block of a page. */
export interface Block {
  readonly page: string
  /** Line of the page on which its text begins. */
  readonly line: number
  readonly language: string
  readonly text: string
}

const guides = readdirSync(join(root, 'docs/guides')).filter((name) => name.endsWith('.md'))

/** Every page that people write. */
export const pages = ['README.md', 'DEVELOPERS.md', ...guides.map((name) => `docs/guides/${name}`)]

export function textOf(page: string): string {
  return readFileSync(join(root, page), 'utf8')
}

export function blocksIn(page: string): readonly Block[] {
  const text = textOf(page)
  return [...text.matchAll(/^```(\w*)\n([\s\S]*?)^```$/gm)].map(({ index, 1: language = '', 2: body = '' }) => ({
    page,
    line: text.slice(0, index).split('\n').length + 1,
    language,
    text: body,
  }))
}

/** Blocks of all pages in one language, with the name that a test calls them by. */
export function blocksOf(language: string): readonly (readonly [string, Block])[] {
  const blocks = pages.flatMap(blocksIn).filter((block) => block.language === language)
  return blocks.map((block) => [`${block.page}:${block.line}`, block])
}

/** The file that a block says it stands in: its first line is a comment with a path. */
export function fileOf({ text }: Block): string | undefined {
  return /^(?:#|\/\/) ((?:src|rules|shared|tests)\/\S+)\n/.exec(text)?.[1]
}
