/** The stages of a job, in order. */
export const phases = ['survey', 'design', 'permit', 'rough', 'tests', 'start-up', 'final', 'service'] as const
/** A stage of a job. */
export type Phase = (typeof phases)[number]

/** Whether a rule asked from a phase on is due. Without a phase everything is asked. */
export function isDue(from: Phase, now: Phase | undefined): boolean {
  return now === undefined || phases.indexOf(from) <= phases.indexOf(now)
}
