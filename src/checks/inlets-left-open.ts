import { atLeastZero, fact, rebound } from '../facts/index.js'
import { chimneyFlue, quantity } from '../model/index.js'

/** How many unused inlets stand open into a chimney flue: as counted, and at least those that are listed as left open. */
export const inletsLeftOpen = fact('inletsLeftOpen', {
  of: chimneyFlue,
  type: quantity('count'),
  read: ({ ask, parts }) => {
    const counted = ask('openInlets')
    const { things, more } = parts('inlets')
    const states = things.map((inlet) => ({ id: inlet.id, state: ask('state', inlet) }))
    const open = states.filter(({ state }) => state.state === 'word' && state.word === 'open')
    const perhaps = states.filter(({ state }) => state.state !== 'word')
    const { low, high } = atLeastZero(counted)
    const least = Math.max(low, open.length)
    const most = Math.max(least, Number.isFinite(high) ? high : open.length + perhaps.length + more)
    const missing = [...counted.missing, ...perhaps.flatMap(({ state }) => state.missing)]
    return { ...rebound([], least, most), witness: open.map(({ id }) => id), missing: least === most ? [] : missing }
  },
})
