/** A map without some of its keys. */
export function without(
  map: Readonly<Record<string, unknown>>,
  ...keys: readonly string[]
): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(map).filter(([key]) => !keys.includes(key)))
}
