import { fact, known, unknown, type Answer, type Context, type FactHandle } from '../facts/index.js'
import { quantity, type FamilySpec, type KindSpec } from '../model/index.js'
import { reasonText, stepText, type Sizing } from '../sizing/index.js'
import type { QuantityName } from '../units/index.js'
import { sizeLine, type Taking } from './sizes/size-line.js'

interface SizedWords {
  readonly of: KindSpec | FamilySpec
  readonly quantity: QuantityName
  readonly size: (context: Context, take: Taking) => Sizing
}

/** Declares a derived fact from a calculation: known when every input is, with the working as its witness. */
export function sizedFact(name: string, { of, quantity: amount, size }: SizedWords): FactHandle {
  return fact(name, { of, type: quantity(amount), read: (context) => answer(name, amount, context, size) })
}

function answer(name: string, of: QuantityName, context: Context, size: SizedWords['size']): Answer {
  const line = sizeLine({ name }, of, (take) => size(context, take))
  switch (line.state) {
    case 'sized':
      return known(line.value, { witness: line.working.map((step) => stepText(step, context.installation.units)) })
    case 'impossible':
      return unknown({ witness: [reasonText(line.why, context.installation.units)] })
    case 'open':
      return unknown({ missing: line.missing })
    case 'bounded':
    case 'told':
      return unknown()
    default:
      return neverLine(line)
  }
}

function neverLine(line: never): never {
  throw new TypeError(`no such line: ${String(line)}`)
}
