import { openEquipment, openSeed } from '../houses/open-house.js'
import type { InstallationWritten } from '../../src/model/index.js'

/** The larkspur house with its makers' data, as an app would hold it after parsing. */
export const larkspur = {
  document: openSeed('larkspur-lane') as InstallationWritten,
  equipment: openEquipment(),
}
