import { createRequire } from 'node:module'
import type * as Stock from 'json-rules-engine'

/** The package loaded a second time, as an app has it that installed its own copy. */
export function openForeignCopy(): typeof Stock {
  const require = createRequire(import.meta.url)
  const loaded = Object.keys(require.cache).filter((file) => file.includes('json-rules-engine'))
  const kept = loaded.map((file) => [file, require.cache[file]] as const)
  for (const file of loaded) Reflect.deleteProperty(require.cache, file)
  const copy = require('json-rules-engine') as typeof Stock
  for (const [file, module] of kept) require.cache[file] = module
  return copy
}
