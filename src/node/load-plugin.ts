import { createRequire } from 'node:module'
import { join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { isMap, type Problem } from '../model/index.js'
import type { Plugin } from '../rulebook/index.js'
import { CouldNotRun } from './could-not-run.js'
import { atPath, attempt } from './files.js'

/**
 * Loads the plugins that an ES module exports. A path is meant from the current folder; any other name is a package
 * installed there.
 *
 * @throws CouldNotRun
 */
export async function loadPlugins(module: string): Promise<readonly Plugin[]> {
  const url = addressOf(module)
  if (url === undefined)
    throw refused(module, 'no-such-module', 'There is no such file, and no installed package of this name.')
  const exported = await importFrom(url, module)
  const plugins = [...new Set(Object.values(exported))].filter(isPlugin)
  if (plugins.length > 0) return plugins
  throw refused(
    module,
    'no-plugin',
    `This module exports no plugin${contractHint(exported)}: write "export const mine = definePlugin({ name, version, contract: 1, ... })".`,
  )
}

function addressOf(module: string): string | undefined {
  if (atPath(module) === 'file') return pathToFileURL(resolve(module)).href
  const from = createRequire(join(resolve('.'), 'command-line.js'))
  const found = attempt(() => from.resolve(module))
  return found === undefined ? undefined : pathToFileURL(found).href
}

async function importFrom(url: string, module: string): Promise<Readonly<Record<string, unknown>>> {
  try {
    const loaded: unknown = await import(url)
    return typeof loaded === 'object' && loaded !== null ? { ...loaded } : {}
  } catch (reason) {
    throw refused(
      module,
      'broken-module',
      `This module cannot be loaded: ${reason instanceof Error ? reason.message : String(reason)}`,
    )
  }
}

function isPlugin(value: unknown): value is Plugin {
  if (!isMap(value) || value.contract !== 1) return false
  const lists = [value.kinds, value.facts, value.checks].every((list) => Array.isArray(list))
  return (
    lists &&
    typeof value.name === 'string' &&
    typeof value.version === 'string' &&
    isMap(value.rules) &&
    isMap(value.sources)
  )
}

function contractHint(exported: Readonly<Record<string, unknown>>): string {
  const other = Object.values(exported).find(
    (value) => isMap(value) && typeof value.contract === 'number' && value.contract !== 1,
  )
  return isMap(other) ? ` of contract 1, only one of contract ${String(other.contract)}` : ''
}

function refused(file: string, code: string, message: string): CouldNotRun {
  const problem: Problem = { code, pointer: '', message, file }
  return new CouldNotRun([problem])
}
