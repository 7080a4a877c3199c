/** Facts that are worked out from nearly everything a house states. */
export const sizedFacts: readonly string[] = [
  'volumeNeeded',
  'swollenWater',
  'outputAtDesign',
  'pressureLeft',
  'pressureLost',
  'designReturn',
  'firstHourWater',
  'chargeGap',
  'returnSeen',
]
