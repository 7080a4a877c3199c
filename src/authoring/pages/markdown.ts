/** The line that every written page ends with. */
export function writtenBy(source: string): string {
  return `*Written by \`npm run generate\` from ${source}; changes belong there.*`
}

/** A table; nothing where it has no rows. */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  if (rows.length === 0) return []
  return [row(head), row(head.map(() => '---')), ...rows.map(row)]
}

function row(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|').replaceAll('\n', ' ')).join(' | ')} |`
}

/** Blocks as one page, an empty line between them. */
export function page(blocks: readonly (string | readonly string[])[]): string {
  const texts = blocks
    .map((block) => (typeof block === 'string' ? block : block.join('\n')))
    .filter((text) => text !== '')
  return `${texts.join('\n\n')}\n`
}

export function code(text: string): string {
  return `\`${text}\``
}

/** Words in a sentence: `a, b or c`. */
export function orList(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`
}

export function capital(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`
}
