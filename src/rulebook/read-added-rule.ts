import { isMap, textOf, type Problem } from '../model/index.js'
import { checkShape } from './check-shape.js'
import { appliesOf, type Change } from './overlay-change.js'
import { checkBasis, readRule, valueReading } from './read-rule.js'
import { addChangeShape } from './rule-shape.js'

/** `add`: the authority brings a rule of its own. */
export function compileAdd(raw: unknown, change: Change): undefined {
  const { compiling, steps, authority, found, data } = change
  const written = checkShape(addChangeShape, raw, steps, compiling.problems)
  const added = written?.add
  if (written === undefined || !isMap(added)) return undefined
  const { id, ...rule } = added
  const name = textOf(id)
  if (name === undefined)
    return compiling.problems.add('no-id', [...steps, 'add'], 'An added rule has an id, such as fill/pressure-sign.', {
      nearest: 'id',
    })
  const read = readRule(`${data.overlay}/${name}`, rule, {
    catalogue: compiling.catalogue,
    sources: compiling.sources,
    authority,
    file: compiling.file,
  })
  const under = (problem: Problem): Problem => ({ ...problem, pointer: `/${steps.join('/')}/add${problem.pointer}` })
  compiling.problems.found.push(...read.problems.map(under))
  compiling.warnings.found.push(...read.warnings.map(under))
  if (read.rule === undefined) return undefined
  const values = valueReading(read.rule.subject, compiling.catalogue, compiling.problems)
  const applies = appliesOf(written.effective, read.rule.subject, change, values)
  const demands = read.rule.demands.map((demand) => ({
    ...demand,
    nature: written.nature,
    ...(applies === undefined ? {} : { applies }),
  }))
  if (written.nature === 'verbal-habit')
    for (const demand of demands)
      checkBasis(demand.basis, demand.severity, written.nature, {
        steps,
        sources: compiling.sources,
        problems: compiling.problems,
      })
  found.added.push(Object.freeze({ ...read.rule, demands }))
}
