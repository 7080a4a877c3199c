import type { Context } from '../../../facts/index.js'
import type { SizeLine } from '../size-line.js'

export function ghostLines(_: Context): readonly SizeLine[] {
  return []
}
