import { describe, expect, it } from 'vitest'
import { ask, boundsOf, missingOf, type Written } from './asking.js'

const house = (alarms: readonly Written[], complete: Written = { coAlarm: String(alarms.length) }): Written => ({
  complete,
  spaces: [{ id: 'hall' }, { id: 'cellar' }],
  components: alarms.map((alarm, index) => ({ id: `CO${index + 1}`, kind: 'coAlarm', ...alarm })),
})

const linked = (document: Written): readonly string[] => boundsOf(ask(document, 'hall', 'linkedAlarms'), 'count')

describe('linked alarms of a space', () => {
  it('counts those that hang there and sound with the others', () => {
    const alarms = [
      { space: 'hall', interconnected: 'yes' },
      { space: 'hall', interconnected: 'no' },
      { space: 'cellar', interconnected: 'yes' },
    ]
    expect(linked(house(alarms))).toEqual(['1'])
    expect(ask(house(alarms), 'hall', 'linkedAlarms').witness).toEqual(['CO1'])
    expect(linked(house([]))).toEqual(['0'])
  })

  it('one that may be linked, or may hang there, counts as possible', () => {
    expect(linked(house([{ space: 'hall' }]))).toEqual(['0', '1'])
    expect(linked(house([{ interconnected: 'yes' }]))).toEqual(['0', '1'])
    expect(linked(house([{ interconnected: 'no' }]))).toEqual(['0'])
    expect(missingOf(ask(house([{ space: 'hall' }]), 'hall', 'linkedAlarms'))).toEqual(['CO1.interconnected'])
  })

  it('those listed are not all', () => {
    const uncounted = house([{ space: 'hall', interconnected: 'yes' }], {})
    expect(linked(uncounted)).toEqual(['1', 'no upper limit'])
    expect(missingOf(ask(uncounted, 'hall', 'linkedAlarms'))).toEqual(['coAlarm.count'])
  })
})
