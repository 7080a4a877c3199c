import { corrodible } from '../model/index.js'

/** Whether acid condensate attacks pipe or a drain of this type. */
export function isCorrodible(type: string): boolean {
  return corrodible.some((one) => one === type)
}
