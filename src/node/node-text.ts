import { isNode, isScalar, Scalar } from 'yaml'

/** Text without marks around it, text in quotes, or text in lines of its own after `|` or `>`. */
export type WayOfWriting = 'plain' | 'quoted' | 'block'

/** The text of a scalar; nothing for a list, a map or a reference. */
export function textOf(node: unknown): string | undefined {
  return isScalar(node) ? String(node.value) : undefined
}

export function wayOfWriting(node: unknown): WayOfWriting | undefined {
  if (!isScalar(node)) return undefined
  if (node.type === Scalar.QUOTE_SINGLE || node.type === Scalar.QUOTE_DOUBLE) return 'quoted'
  return node.type === Scalar.PLAIN ? 'plain' : 'block'
}

/** Where a node begins, in characters from the start of the text. */
export function startOf(node: unknown): number {
  return isNode(node) ? (node.range?.[0] ?? 0) : 0
}

/** Where the value of a node ends. */
export function endOf(node: unknown): number {
  return isNode(node) ? (node.range?.[1] ?? 0) : 0
}

/** What stands in the text for a node, marks and line ends included. */
export function sourceOf(node: unknown, text: string): string {
  return text.slice(startOf(node), endOf(node))
}
