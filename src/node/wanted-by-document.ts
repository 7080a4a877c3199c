import { isMap, pointerOf } from '../model/index.js'
import type { PlainData } from './plain-data.js'
import type { FileKind, WantedFile } from './wanted-file.js'

/** The overlays and equipment that a document names, before anybody has read it as an installation. */
export function wantedByDocument(value: PlainData): readonly WantedFile[] {
  if (!isMap(value)) return []
  const jurisdiction = isMap(value.jurisdiction) ? value.jurisdiction : {}
  const authorities = plainValue(jurisdiction.authorities)
  const components = Array.isArray(value.components) ? value.components : []
  return [
    ...listed(authorities).flatMap((name, index) => wanted('overlay', name, ['jurisdiction', 'authorities', index])),
    ...listed(components).flatMap((component, index) =>
      isMap(component) ? wanted('equipment', plainValue(component.use), ['components', index, 'use']) : [],
    ),
  ]
}

/** An entry in its long form carries the value inside. */
function plainValue(raw: unknown): unknown {
  return isMap(raw) ? raw.value : raw
}

function listed(raw: unknown): readonly unknown[] {
  return Array.isArray(raw) ? raw : []
}

function wanted(kind: FileKind, name: unknown, steps: readonly (string | number)[]): readonly WantedFile[] {
  return typeof name === 'string' && name !== 'unknown' ? [{ kind, name, pointer: pointerOf(steps) }] : []
}
