import type { HostRule } from '../engine/index.js'
import { isMap, type Problem } from '../model/index.js'
import { CouldNotRun } from './could-not-run.js'
import { loadText, type LoadedText } from './load-text.js'
import { withPositions } from './locate.js'

/** A host's rules, with the file that they came from. */
export interface LoadedHostRules {
  readonly rules: readonly HostRule[]
  readonly text: LoadedText
}

/**
 * Reads a JSON list of rules for json-rules-engine. Numbers stay numbers, in SI.
 *
 * @throws CouldNotRun
 */
export function loadHostRules(file: string): LoadedHostRules {
  const text = loadText(file)
  const raw = parsed(text)
  const items: readonly unknown[] = Array.isArray(raw) ? raw : []
  const rules = items.filter(isHostRule)
  const wrong = items.flatMap((item, index) =>
    isHostRule(item)
      ? []
      : [problem(`/${index}`, 'A rule has a name, "of" (a kind), conditions, and an event with a type.')],
  )
  const problems = Array.isArray(raw) ? wrong : [problem('', 'A list of rules is expected here.')]
  if (problems.length > 0) throw new CouldNotRun(withPositions(problems, file, text.source))
  return { rules, text }
}

/** Problems of rules are told by the name of the rule; here they get file, line and column. */
export function placed(problems: readonly Problem[], { rules, text }: LoadedHostRules): readonly Problem[] {
  return problems.flatMap((one) => {
    const { file, ...rest } = one
    const index = rules.findIndex(({ name }) => file === `rule ${name}`)
    return index === -1
      ? [one]
      : withPositions([{ ...rest, pointer: `/${index}${one.pointer}` }], text.file, text.source)
  })
}

function parsed({ file, text }: LoadedText): unknown {
  try {
    return JSON.parse(text)
  } catch {
    throw new CouldNotRun([{ ...problem('', 'Rules for json-rules-engine are written in JSON.'), file }])
  }
}

function isHostRule(value: unknown): value is HostRule {
  if (!isMap(value) || typeof value.name !== 'string' || typeof value.of !== 'string') return false
  return isMap(value.conditions) && isMap(value.event) && typeof value.event.type === 'string'
}

function problem(pointer: string, message: string): Problem {
  return { code: 'unreadable-rule', pointer, message }
}
