import { openEquipment, openSeed, openTowns } from '../houses/open-house.js'
import type { InstallationWritten } from '../../src/model/index.js'

/** The larkspur house with its makers' data, as an app holds it after parsing. */
export const larkspur = {
  document: openSeed('larkspur-lane') as InstallationWritten,
  equipment: openEquipment(),
}

export const twoTowns = openTowns('harrowmere', 'saltmarrow')
