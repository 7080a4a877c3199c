/** Typographic signs brought to the ones on a keyboard, single spaces, no space around. */
export function plainText(text: string): string {
  return text
    .replace(/[^ -~]/g, keyboardSigns)
    .replace(/''/g, '"')
    .replace(/ {2,}/g, ' ')
    .trim()
}

const signs: Readonly<Record<string, string>> = Object.freeze({
  '\u2018': "'",
  '\u2019': "'",
  '\u2032': "'",
  '\u201c': '"',
  '\u201d': '"',
  '\u2033': '"',
  '\u2212': '-',
  '\u2010': '-',
  '\u2011': '-',
  '\u2013': '-',
  '\u2044': '/',
  '\u00ba': '°',
  '\u02da': '°',
  '\u2103': '°C',
  '\u2109': '°F',
  '²': '2',
  '³': '3',
  '⅛': ' 1/8',
  '¼': ' 1/4',
  '⅜': ' 3/8',
  '½': ' 1/2',
  '⅝': ' 5/8',
  '¾': ' 3/4',
  '⅞': ' 7/8',
})

function keyboardSigns(sign: string): string {
  if (/\s/.test(sign)) return ' '
  return signs[sign] ?? sign
}
