/** Prints a heading and rows whose columns line up; numbers stand right. */
export function printTable(title: string, rows: readonly (readonly string[])[]): void {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => (row[column] ?? '').length)))
  const lines = rows.map((row) => row.map((cell, column) => pad(cell, widths[column] ?? 0, column)).join('  '))
  console.log(`\n${title}\n${lines.map((line) => `  ${line.trimEnd()}`).join('\n')}`)
}

/** A time in the unit in which it is easily read. */
export function spokenTime(microseconds: number): string {
  if (microseconds < 1_000) return `${microseconds.toFixed(1)} us`
  return microseconds < 1_000_000
    ? `${(microseconds / 1_000).toFixed(2)} ms`
    : `${(microseconds / 1_000_000).toFixed(2)} s`
}

export function spokenSize(bytes: number): string {
  return bytes < 1_000_000 ? `${(bytes / 1_000).toFixed(1)} kB` : `${(bytes / 1_000_000).toFixed(2)} MB`
}

export function times(ratio: number): string {
  return `x ${ratio < 10 ? ratio.toFixed(2) : ratio.toFixed(0)}`
}

function pad(cell: string, width: number, column: number): string {
  return column === 0 ? cell.padEnd(width) : cell.padStart(width)
}
