import { describe, expect, it } from 'vitest'
import { isConnected } from '../../src/network/index.js'
import { networkOf, part, run } from './build.js'
import { water } from './questions.js'

const port = { component: 'B1', port: 'relief' }

describe('whether anything is drawn from a port', () => {
  it('is yes where a line begins, though it leads into the unknown', () => {
    const network = networkOf({ parts: [part('B1', 'boiler')], runs: [run('L1', 'B1.relief unknown')] })
    expect(isConnected(network, port)).toMatchObject({ truth: 1, witness: ['B1.relief', 'L1'], missing: [] })
    expect(isConnected(network, water)).toMatchObject({ truth: 1 })
  })

  it('is no where the port is capped', () => {
    const network = networkOf({ parts: [part('B1', 'boiler', { capped: ['relief'] })], runs: [] })
    expect(isConnected(network, port)).toMatchObject({ truth: -1, missing: [] })
    expect(isConnected(network, water).missing).toEqual([
      { subject: 'B1', fact: 'supply' },
      { subject: 'B1', fact: 'return' },
    ])
  })

  it('cannot be told where nothing is drawn and nothing capped, or nothing listed', () => {
    const network = networkOf({ parts: [part('B1', 'boiler')], runs: [run('L1', 'B1.relief')] })
    expect(isConnected(network, port)).toMatchObject({ truth: 0, missing: [{ subject: 'B1', fact: 'relief' }] })
    expect(isConnected(network, { component: 'B9', port: 'relief' }).truth).toBe(0)
  })
})
