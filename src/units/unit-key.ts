/** The form in which unit texts are looked up: "in. w.c." and "in wc" are one, "gal per min" is "gal/min". */
export function unitKey(unitText: string): string {
  return unitText
    .replace(/\bper\b/gi, '/')
    .replace(/[ .^]/g, '')
    .replace(/°/g, 'deg')
}
