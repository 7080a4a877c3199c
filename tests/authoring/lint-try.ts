import { lintRuleSet } from '../../src/authoring/index.js'
import { printProblem } from '../../src/model/index.js'
import { foundation, written } from '../rules/base-rules.js'
import { faultyRule, faultyTown } from './faulty-files.js'
import { positionsOf } from './files.js'
const positions = new Map([...written.positions, ...positionsOf([faultyRule, faultyTown])])
console.log(lintRuleSet({ ...written, rules: [...written.rules, faultyRule], overlays: [...written.overlays, faultyTown], plugins: [foundation], positions }).map(printProblem).join('\n'))
