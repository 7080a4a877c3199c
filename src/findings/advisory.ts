/** Printed with every report. */
export const advisory =
  "This is advice, a self-check and no approval. The adopted code and the official who applies it, the listing, the makers' instructions and licensed people decide. " +
  'Gas, flue gas, pressure and hot water can kill: if you smell gas or an alarm sounds, leave and call for help.'
