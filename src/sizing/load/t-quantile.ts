/**
 * Half width, in standard errors, of the band that holds the truth 95 times of 100 (Student).
 *
 * @param freedom points less fitted numbers, 1 or more
 * @example
 * tQuantile(10) // 2.228
 */
export function tQuantile(freedom: number): number {
  return printed[Math.floor(freedom) - 1] ?? 1.96 + 2.4 / freedom
}

/** 97.5 % points of Student's distribution for 1 to 30 degrees of freedom; printed in every book of statistics. */
const printed = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131, 2.12, 2.11,
  2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048, 2.045, 2.042,
]
