import type { Outcome } from '../findings/index.js'

/** What the command line tells the shell. */
export const exitCodes = { clear: 0, failing: 1, couldNotRun: 2, open: 3 } as const
/** A number for the shell. */
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes]

/** Which outcomes are told to the shell: none, failing ones only, or open ones as well. */
export const exitRules = ['never', 'failing', 'open'] as const
/** Which outcomes are told to the shell. */
export type ExitRule = (typeof exitRules)[number]

/** The exit code of a check that ran. */
export function exitCodeFor(outcome: Outcome, exitOn: ExitRule): ExitCode {
  if (exitOn === 'never') return exitCodes.clear
  return outcome === 'open' && exitOn === 'failing' ? exitCodes.clear : exitCodes[outcome]
}
