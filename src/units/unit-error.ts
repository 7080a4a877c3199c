/** Why a {@link UnitError} was thrown. */
export type UnitErrorCode = 'unreadable-quantity' | 'unwritable-quantity' | 'not-a-number'

/** An amount that cannot be read, written or compared. `suggestion` is the text to write instead, where there is one. */
export class UnitError extends Error {
  override readonly name = 'UnitError'
  readonly code: UnitErrorCode
  readonly suggestion: string | undefined

  constructor(code: UnitErrorCode, message: string, suggestion?: string) {
    super(message)
    this.code = code
    this.suggestion = suggestion
  }
}
