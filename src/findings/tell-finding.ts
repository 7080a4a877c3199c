import type { Facts } from '../facts/index.js'
import type { Installation, Thing } from '../model/index.js'
import { viewFor, type JudgedDemand, type Verdict } from '../judging/index.js'
import { allLeaves, isBinding, type JudgedLeaf, type Rulebook } from '../rulebook/index.js'
import type { UnitSystem } from '../units/index.js'
import { fill, paramsFor, spokenId } from './fill-words.js'
import { missingOf, unique } from './missing-of.js'
import { printAnswer } from './print-answer.js'
import type { DemandTold, Finding } from './report.js'
import { noWayOut } from './no-way-out.js'
import { speaking } from './speak.js'
import { spokenAuthority, tellBasis } from './tell-basis.js'
import { marginOf, tellEvidence } from './tell-evidence.js'

export type JudgedVerdict = Verdict & { readonly type: 'judged' }

export interface Telling {
  readonly rulebook: Rulebook
  readonly facts: Facts
  readonly installation: Installation
  readonly system: UnitSystem
}

/** A fail or an undecided verdict in words, with its numbers and where they come from. */
export function tellFinding(verdict: JudgedVerdict, telling: Telling): Finding | undefined {
  const { rule, subject, severity } = verdict
  if ((verdict.verdict !== 'fail' && verdict.verdict !== 'undecided') || severity === undefined) return undefined
  const spoken = speaking(verdict.demands, verdict.verdict, telling.system)
  if (spoken === undefined) return undefined
  const ground = spoken.demand.basis[0]?.ground ?? 'practice'
  const missing = unique(
    verdict.demands.filter((one) => one.verdict === 'undecided').flatMap((one) => missingOf(one, telling.installation)),
  )
  const leaves = allLeaves(spoken.require)
  const words = sentence(verdict, spoken, telling)
  const rests = restsOn(verdict.demands.filter((one) => one.verdict === verdict.verdict))
  const view = viewFor(telling.facts, spoken.demand)
  const texts = {
    rulebook: telling.rulebook,
    rule,
    subject,
    view,
    system: telling.system,
    ...spokenDemand(spoken, telling),
  }
  const say = (text: string): string => fill(text, paramsFor(text, texts))
  return {
    key: `${rule.id}/${subject.id}`,
    rule: rule.id,
    title: rule.title,
    verdict: verdict.verdict,
    severity,
    ground,
    ...(verdict.couldBe === undefined ? {} : { couldBe: verdict.couldBe }),
    subject: tellSubject(subject),
    say: words.say,
    message: words.message,
    because: spoken.demand.because ?? say(rule.because),
    ...(rule.remedy === undefined ? {} : { remedy: say(rule.remedy) }),
    ...(rule.caution === undefined ? {} : { caution: say(rule.caution) }),
    demands: verdict.demands.map((one) => tellDemand(one, one === spoken, telling)),
    ...(rests === undefined ? {} : { restsOn: rests }),
    evidence: [
      ...(spoken.when === undefined ? [] : tellEvidence(spoken.when, 'when', subject, telling.system)),
      ...tellEvidence(spoken.require, 'require', subject, telling.system),
    ],
    ...wayOf(leaves, verdict.verdict),
    ...(missing.length === 0 ? {} : { missing }),
  }
}

/** The first way that was walked, and where it goes wrong. */
function wayOf(
  leaves: readonly JudgedLeaf[],
  verdict: 'fail' | 'undecided',
): Pick<Finding, 'witness' | 'turningPoint'> {
  const shown = leaves.map(({ left }) => left).find(({ witness }) => witness !== undefined && witness.length > 0)
  if (shown?.witness === undefined) return {}
  const { witness, turningPoint } = shown
  return verdict === 'fail' && turningPoint !== undefined ? { witness, turningPoint } : { witness }
}

export function tellSubject(subject: Thing): Finding['subject'] {
  return {
    kind: subject.kind.name,
    spoken: subject.kind.spoken,
    id: subject.id,
    ...(subject.name === undefined ? {} : { name: subject.name }),
    place: subject.kind.place,
    listed: subject.unlisted !== true,
  }
}

function sentence(verdict: JudgedVerdict, spoken: JudgedDemand, telling: Telling): Pick<Finding, 'say' | 'message'> {
  const { rule, subject } = verdict
  const key = `${rule.id}/${spoken.demand.id}/${verdict.verdict}`
  if (verdict.verdict === 'undecided') {
    const params = { title: rule.title, id: spokenId(subject) }
    return {
      say: { key, params },
      message: `Cannot be told for ${params.id}: ${params.title.charAt(0).toLowerCase()}${params.title.slice(1)}.`,
    }
  }
  const text = spoken.demand.say ?? rule.say
  const view = viewFor(telling.facts, spoken.demand)
  const params = paramsFor(text, {
    rulebook: telling.rulebook,
    rule,
    subject,
    view,
    system: telling.system,
    ...spokenDemand(spoken, telling),
  })
  const extra = [sinceText(verdict, spoken), couldBeText(verdict), noWayOut(verdict.demands)].filter(
    (part) => part !== undefined,
  )
  return { say: { key, params }, message: [fill(text, params), ...extra].join(' ') }
}

function spokenDemand(
  { demand, require }: JudgedDemand,
  { system }: Telling,
): { readonly demand: string; readonly authority: string } {
  const leaf = allLeaves(require)[0]
  const limit =
    leaf?.right.map((one) => printAnswer(one, leaf.leaf.fact.type, system) ?? 'something not known').join(' to ') ?? ''
  const ground = demand.basis[0]?.ground ?? 'practice'
  const heard = demand.nature === 'verbal-habit' ? `${demand.authority.name} (heard to ask)` : demand.authority.name
  return { demand: limit, authority: spokenAuthority(ground, heard, demand.authority.layer === 'base') }
}

/** Why the date matters: without this demand the house would have passed before it. */
function sinceText({ demands, severity }: JudgedVerdict, { demand }: JudgedDemand): string | undefined {
  if (demand.effective?.from === undefined || demand.severity !== severity) return undefined
  const others = demands.some(
    (one) =>
      one.demand !== demand &&
      one.verdict === 'fail' &&
      one.demand.severity === severity &&
      one.demand.effective?.from === undefined,
  )
  return others ? undefined : `Demanded since ${demand.effective.from}; before that it would have passed here.`
}

function couldBeText({ couldBe, severity }: JudgedVerdict): string | undefined {
  return couldBe === undefined ? undefined : `At least "${severity ?? ''}"; could be "${couldBe}".`
}

function tellDemand(one: JudgedDemand, spoke: boolean, telling: Telling): DemandTold {
  const { demand, require } = one
  const leaf = allLeaves(require)[0]
  const value =
    leaf && leaf.right.map((side) => printAnswer(side, leaf.leaf.fact.type, telling.system) ?? 'not known').join(' to ')
  const margin = leaf && marginOf(leaf, telling.system)
  const { authority } = demand
  const exemption = one.exempted === undefined ? undefined : demand.exemptions[one.exempted.index]
  const letGo = exemption !== undefined && one.exempted !== undefined && one.exempted.truth >= 0
  return {
    id: demand.id,
    by: {
      id: authority.id,
      name: spokenAuthority(demand.basis[0]?.ground ?? 'practice', authority.name, authority.layer === 'base'),
      ...(authority.layer === 'base' ? {} : { official: authority.official }),
      ...(authority.writtenBy === undefined ? {} : { writtenBy: authority.writtenBy }),
    },
    severity: demand.severity,
    verdict: one.verdict,
    spoke,
    ...(value === undefined ? {} : { value }),
    ...(margin === undefined ? {} : { margin: margin.text }),
    basis: tellBasis(demand, telling.rulebook, telling.installation),
    ...(demand.nature === undefined ? {} : { nature: demand.nature }),
    ...(demand.effective?.from === undefined ? {} : { since: demand.effective.from }),
    ...(letGo
      ? { exempted: exemptedText(one, exemption.authority.name, exemption.clause, exemption.authority.official) }
      : {}),
  }
}

function exemptedText(one: JudgedDemand, name: string, clause: string, official: boolean): string {
  if (one.exempted?.truth === 1) return `let go by ${name}, ${clause}`
  if (!official && isBinding(one.demand.severity))
    return `${name} may let it go (${clause}); the file is not the authority's own, confirm with the office`
  return `${name} may let it go (${clause})`
}

function restsOn(demands: readonly JudgedDemand[]): Finding['restsOn'] {
  const answers = demands.flatMap((one) => allLeaves(one.require)).flatMap(({ left, right }) => [left, ...right])
  if (answers.some((answer) => answer.assumed)) return 'assumption'
  return answers.some((answer) => answer.stated) ? 'statement' : undefined
}
