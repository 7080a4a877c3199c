import { type Thing } from '../../model/index.js'
import type { RunPart } from '../../sizing/index.js'
import { pipeRoughness, pipeSize, surfaceOf } from '../../tables/index.js'
import type { Asker } from './asker.js'
import type { HeatingPassage } from './heating-passages.js'
import { listedPipe } from '../listed-pipe.js'

/** What takes pressure in a passage; undefined where a number is missing. Of a line, each of its pieces is an equal part. */
export function passageParts(passage: HeatingPassage, pieces: number, asker: Asker): readonly RunPart[] | undefined {
  const { owner, main } = passage
  if (owner.kind.section === 'lines') return pipeParts(owner, pieces, asker)
  return main ? componentParts(owner, asker) : []
}

function pipeParts(line: Thing, pieces: number, asker: Asker): readonly RunPart[] | undefined {
  const type = asker.word(line, 'pipe.type')
  const size = asker.number(line, 'pipe.size')
  const length = asker.number(line, 'pipe.equivalentLength')
  if (type === undefined || size === undefined || length === undefined) return undefined
  const pipe = listedPipe(type)
  const inside = pipe && pipeSize(pipe, size)?.inside
  if (pipe === undefined || inside === undefined) return asker.lacks(line.id, 'pipe.type')
  const { rough } = pipeRoughness(surfaceOf(pipe))
  return [{ name: line.id, part: 'pipe', insideDiameter: inside, length: length / pieces, roughness: rough }]
}

function componentParts(thing: Thing, asker: Asker): readonly RunPart[] | undefined {
  switch (thing.kind.name) {
    case 'boiler':
      return pointParts(thing, ['resistance.flow', 'resistance.head'], asker)
    case 'indirectTank':
      return pointParts(thing, ['coilFlow', 'coilHead'], asker)
    case 'heatExchanger':
      return pointParts(thing, ['ratedFlow', 'hotHead'], asker)
    case 'isolationValve':
      return asker.word(thing, 'fullPort') === 'no' ? valveParts(thing, asker) : wideOpen(thing, asker)
    case 'purgeValve':
      return []
    default:
      return Object.hasOwn(thing.kind.fields, 'flowCoefficient') ? valveParts(thing, asker) : []
  }
}

/** A valve as wide as the pipe is covered by the equivalent length of its line. */
function wideOpen(thing: Thing, asker: Asker): readonly RunPart[] | undefined {
  return asker.word(thing, 'fullPort') === undefined ? undefined : []
}

function valveParts(thing: Thing, asker: Asker): readonly RunPart[] | undefined {
  const kv = asker.number(thing, 'flowCoefficient')
  return kv === undefined ? undefined : [{ name: thing.id, part: 'valve', kv }]
}

type Point = readonly [flow: string, head: string]

function pointParts(thing: Thing, [flowName, headName]: Point, asker: Asker): readonly RunPart[] | undefined {
  const flow = asker.number(thing, flowName)
  const head = asker.number(thing, headName)
  if (flow === undefined || head === undefined) return undefined
  return [{ name: thing.id, part: 'square', coefficient: head / flow ** 2 }]
}
