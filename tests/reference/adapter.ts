/** One row of the check values: what an authority says a quantity is for given inputs. */
export interface CheckRecord {
  readonly id: string
  readonly quantity: string
  readonly inputs: Readonly<Record<string, unknown>>
  readonly expected: number
  readonly unit: string
  readonly tolerance: number
  readonly tolerance_kind: 'rel' | 'abs'
  readonly source: string
  readonly basis: 'READ' | 'MEMORY' | 'COMPUTED' | 'PRACTICE'
  readonly independent: boolean
}

/** Calculates the quantity of a record in the record's own unit, or says why it is not this library's to calculate. */
export type Adapter = (record: CheckRecord) => number | { readonly notApplicable: string }
