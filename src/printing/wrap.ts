/** Breaks a text into lines at its spaces. A word that is longer than a line is cut; a line is never longer than `width`. */
export function wrap(text: string, width: number): readonly string[] {
  const room = Math.max(1, width)
  const lines: string[] = []
  let line = ''
  for (const word of oneLine(text)
    .split(' ')
    .flatMap((whole) => pieces(whole, room))) {
    const longer = line === '' ? word : `${line} ${word}`
    if (longer.length <= room) {
      line = longer
      continue
    }
    lines.push(line)
    line = word
  }
  return [...lines, line]
}

/** A text as one line, without characters that would steer a terminal. */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Cf}\u2028\u2029\s]+/gu, ' ').trim()
}

function pieces(word: string, width: number): readonly string[] {
  if (word.length <= width) return [word]
  return Array.from({ length: Math.ceil(word.length / width) }, (_, index) =>
    word.slice(index * width, (index + 1) * width),
  )
}
