import { pipeVelocity } from '../../src/sizing/index.js'
import { pipeVolume } from '../../src/sizing/expansion/index.js'
import { largestPexBore, type PipeName, pipeSize } from '../../src/tables/index.js'
import { si } from '../../src/units/index.js'
import { numberOf } from '../sizing/number-of.js'
import type { Adapter, CheckRecord } from './adapter.js'
import { inputOf, textOf } from './input-of.js'

const inch = si('length', '1 in')
const foot = si('length', '1 ft')
const gallon = si('volume', '1 gal')
const gpm = si('volumeFlow', '1 gpm')

/** A key is the longest beginning of an id that an adapter answers for. */
export const adapters: Readonly<Record<string, Adapter>> = {
  'p-cu-K-': (record) => bore(record, 'copper-K', 'nominal_in') / inch,
  'p-cu-L-': (record) => bore(record, 'copper-L', 'nominal_in') / inch,
  'p-cu-M-': (record) => bore(record, 'copper-M', 'nominal_in') / inch,
  'p-cu-DWV-': (record) => bore(record, 'copper-DWV', 'nominal_in') / inch,
  'p-s40-': (record) => bore(record, 'steel-40', 'nps_in') * 1000,
  'p-s40in-': (record) => bore(record, 'steel-40', 'nps_in') / inch,
  'p-pex-': (record) => {
    const largest = largestPexBore(sizeOf(record, 'nominal_in'))
    if (largest === undefined) throw new Error(`${record.id} is not in the table of PEX walls.`)
    return largest / inch
  },
  // The size is looked up by the end of the id, so that the listed bore is what is checked.
  'p-pexv-': (record) => {
    const size = pipeSize('pex', si('nominalSize', record.id.slice('p-pexv-'.length)))
    if (size === undefined) throw new Error(`${record.id} is not in the table of pipes.`)
    return numberOf(pipeVolume({ insideDiameter: size.inside, length: 100 * foot })) / gallon
  },
  'h-vel-': (record) =>
    numberOf(pipeVelocity({ flow: inputOf(record, 'Q_gpm') * gpm, insideDiameter: inputOf(record, 'id_in') * inch })) /
    foot,
}

function bore(record: CheckRecord, pipe: PipeName, name: string): number {
  const size = pipeSize(pipe, sizeOf(record, name))
  if (size === undefined) throw new Error(`${record.id} is not in the table of pipes.`)
  return size.inside
}

function sizeOf(record: CheckRecord, name: string): number {
  return si('nominalSize', textOf(record, name))
}
