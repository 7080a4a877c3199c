const inhibited =
  'its glycols are inhibited and up to 0.65 % heavier than those of Melinder 2010, which the library follows'

/**
 * Records that cannot be met, because their source disagrees with the one that the library follows or because they are
 * rounded more than their tolerance, with the reason. No tolerance is widened for them: they count as not within.
 */
export const contradictions: Readonly<Record<string, string>> = {
  'pg-rho-40-60': inhibited,
  'pg-rho-50-60': inhibited,
  'pg-rho-50-80': inhibited,
  'eg-tf-37.5': 'Melinder 2010, which the library follows, freezes 1.51 K lower at 40 % by mass',
  'l-r': 'the record is rounded to six digits and asks for more: 5.678263 / 13 is 0.43678946',
}
