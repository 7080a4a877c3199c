import { Engine } from 'json-rules-engine'
import type { HostRule } from '../../src/engine/index.js'
import { checkInstallation } from '../../src/index.js'
import { pair, rulebook } from './workshop.js'

/** The pair checked without the engine: what no host may change. */
export const alone = checkInstallation(pair, rulebook)

export const plain: HostRule = {
  name: 'shop/fuel',
  of: 'kettle',
  conditions: { all: [{ fact: 'kettle.fuel', operator: 'equal', value: 'gas' }] },
  event: { type: 'gas-kettle' },
}

export const asking = (fact: string, operator = 'equal'): HostRule => ({
  ...plain,
  conditions: { all: [{ fact, operator, value: 'gas' }] },
})

export const sound: HostRule = {
  ...plain,
  conditions: { all: [{ fact: 'kettle.soundness', operator: 'equal', value: 'sound' }] },
}

export function fail(): never {
  throw new Error('the host fell over')
}

/** Does to an engine of ours what the stock class would do. */
export function behindItsBack(engine: Engine, method: 'addRule' | 'removeRule', words: readonly unknown[]): void {
  const stock: unknown = Reflect.get(Engine.prototype, method)
  if (typeof stock === 'function') Reflect.apply(stock, engine, words)
}
