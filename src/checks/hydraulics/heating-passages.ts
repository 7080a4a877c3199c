import type { Missing } from '../../facts/index.js'
import { mediumGroup, type Installation, type Thing } from '../../model/index.js'
import type { Network, PortNode } from '../../network/index.js'

/** A piece of a line, or a way through a component, between two ports that heating water passes. */
export interface HeatingPassage {
  readonly name: string
  /** The line or component. */
  readonly owner: Thing
  readonly from: string
  readonly to: string
  /** The way that the component is made for; the other ports only hang on it. */
  readonly main: boolean
}

/** What is drawn of the heating water, and where it ends in the unknown. */
export interface HeatingPassages {
  readonly passages: readonly HeatingPassage[]
  readonly openEnds: readonly Missing[]
}

/**
 * The passages of the heating water. Between the ports of a component there is one way round only: through it, with each
 * further port hung on, so that a tee is a point and the relief tapping of a boiler does not bypass it.
 */
export function heatingPassages({ installation, graph }: Network): HeatingPassages {
  const drawn = graph()
  const things = [...installation.things.values()].filter(({ kind }) => kind.section === 'components')
  const nodes = things.flatMap(({ id }) => drawn.portsOf(id).filter(({ group }) => group === heatingWater))
  const links = nodes.flatMap((node) => drawn.linksAt(node.name).map((link) => ({ node, link })))
  const openEnds = [...links.flatMap(({ link }) => link.passage.unknown ?? []), ...untracedLines(installation)]
  const known = links.flatMap(({ node, link: { passage, to } }): readonly Drawn[] => {
    const other = drawn.node(to)
    if (passage.owner === undefined || passage.crosses || other?.group !== heatingWater) return []
    return isForward(passage.owner, node, other) ? [{ owner: passage.owner, from: node, to: other }] : []
  })
  return { passages: spanning(known), openEnds }
}

/** Lines of which not even one end is told: no port leads to them. */
function untracedLines({ things }: Installation): readonly Missing[] {
  return [...things.values()].flatMap(({ id, medium, path }) =>
    medium === 'heatingWater' && path?.every(({ type }) => type === 'unknown') === true
      ? [{ subject: id, fact: 'path' }]
      : [],
  )
}

const heatingWater = mediumGroup('heatingWater')

interface Drawn {
  readonly owner: Thing
  readonly from: PortNode
  readonly to: PortNode
}

/** Every passage is linked from both ends: a way counts in the direction of its kind, a line by the names. */
function isForward(owner: Thing, from: PortNode, to: PortNode): boolean {
  if (owner.kind.section !== 'components') return from.name < to.name
  const ways = owner.kind.ways.map(({ between }) => between.join(' '))
  const forward = `${from.port} ${to.port}`
  const backward = `${to.port} ${from.port}`
  if (ways.includes(forward)) return true
  return !ways.includes(backward) && Object.hasOwn(owner.kind.ports, from.port)
}

function spanning(drawn: readonly Drawn[]): readonly HeatingPassage[] {
  const joined = new Map<string, string>()
  const rootOf = (name: string): string => {
    const above = joined.get(name)
    return above === undefined ? name : rootOf(above)
  }
  const ordered = drawn.toSorted((one, other) => Number(isMain(other)) - Number(isMain(one)))
  return ordered.flatMap((each, index): readonly HeatingPassage[] => {
    const { owner, from, to } = each
    const passage = { name: `${owner.id} ${index}`, owner, from: from.name, to: to.name, main: isMain(each) }
    if (owner.kind.section !== 'components') return [passage]
    const [one, other] = [rootOf(`${owner.id} ${from.name}`), rootOf(`${owner.id} ${to.name}`)]
    if (one === other) return []
    joined.set(one, other)
    return [passage]
  })
}

/** The way that a bare id takes, or one of two that have nothing to do with each other. */
function isMain({ owner, from, to }: Drawn): boolean {
  const [one, other] = owner.kind.through ?? []
  return (from.port === one && to.port === other) || owner.kind.ways.length === 2
}
