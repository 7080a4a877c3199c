/** Something of the host's that went wrong. No verdict of ours is touched by it. */
export interface HostFault {
  readonly at: 'rule' | 'listener' | 'run'
  /** The host's rule, or the rule whose event was being told. */
  readonly rule?: string
  readonly subject?: string
  /** The event that was being told. */
  readonly event?: string
  readonly message: string
}

/** What somebody threw, in words, whatever it is. */
export function wordsOf(reason: unknown): string {
  try {
    return reason instanceof Error ? reason.message : String(reason)
  } catch {
    return 'something that cannot be printed'
  }
}
