import { type Expected } from '../first-impossible.js'

/** An appliance and where its air comes from. */
export interface AirAppliance {
  readonly name: string
  /** W, by its nameplate. */
  readonly heatInput: number
  /** `sealed` takes its air through a pipe from outdoors and asks nothing of the room. */
  readonly air: 'natural-draft' | 'fan-assisted' | 'sealed'
}

/** W of all appliances that take room air, or of one kind of them. */
export function roomAirInput(appliances: readonly AirAppliance[], kind?: 'natural-draft' | 'fan-assisted'): number {
  return appliances
    .filter(({ air }) => (kind === undefined ? air !== 'sealed' : air === kind))
    .reduce((sum, { heatInput }) => sum + heatInput, 0)
}

/** What the appliances must state. */
export function expectedOf(appliances: readonly AirAppliance[]): readonly Expected[] {
  return appliances.map(({ name, heatInput }) => [`heat input of ${name}`, heatInput, 'zero or more'])
}
