import { isMap as isYamlMap, isScalar, parseDocument } from 'yaml'
import type { Listed } from '../model/index.js'

/**
 * The text of a document with its `complete` section brought up to what is listed; every other byte stays.
 * Counts that stand there are renewed, `all` and `states` are added. Nothing where there is no place for it.
 */
export function writeCounts(text: string, listed: Listed): string | undefined {
  const document = parseDocument(text, { schema: 'failsafe' })
  if (!isYamlMap(document.contents)) return undefined
  const pairs = document.contents.items
  const found = pairs.find(({ key }) => isScalar(key) && key.value === 'complete')
  const stated = found !== undefined && isYamlMap(found.value) ? found.value.items.map(({ key }) => nameOf(key)) : []
  const names = [...new Set(['all', 'states', ...stated])].filter(
    (name) => name !== 'states' || listed.states > 0 || stated.includes('states'),
  )
  const line = `complete: { ${names.map((name) => `${name}: ${String(listed.of(name))}`).join(', ')} }`
  const start = startOf(found?.key)
  const end = found !== undefined && isYamlMap(found.value) ? found.value.range[1] : undefined
  if (start !== undefined && end !== undefined) return `${text.slice(0, start)}${line}${text.slice(end)}`
  const next = pairs.find(({ key }) => sections.includes(nameOf(key)))
  const place = startOf(next?.key)
  return place === undefined ? undefined : `${text.slice(0, place)}${line}\n${text.slice(place)}`
}

const sections: readonly string[] = ['components', 'kept', 'removed', 'lines', 'zones', 'spaces', 'fixtures', 'states']

function nameOf(key: unknown): string {
  return isScalar(key) ? String(key.value) : ''
}

function startOf(key: unknown): number | undefined {
  return isScalar(key) ? key.range?.[0] : undefined
}
