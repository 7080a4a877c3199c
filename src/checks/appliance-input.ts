import { fact, unknown } from '../facts/index.js'
import { quantity, ventTermination } from '../model/index.js'

/** Input of the appliance whose vent run ends in a termination. */
export const applianceInput = fact('applianceInput', {
  of: ventTermination,
  type: quantity('heatRate'),
  read: ({ ask, find }) => {
    const run = ask('run')
    const runThing = run.state === 'word' ? find(run.word) : undefined
    if (runThing === undefined) return unknown({ missing: run.missing })
    const appliance = ask('appliance', runThing)
    const applianceThing = appliance.state === 'word' ? find(appliance.word) : undefined
    return applianceThing === undefined ? unknown({ missing: appliance.missing }) : ask('input', applianceThing)
  },
})
