import { si } from '../../units/index.js'

/** Weather in which a burner cycles most; common practice. */
export const mild = si('temperature', '55 F')

/** The shortest run that does not wear a burner; common practice. */
export const shortestRun = si('time', '10 min')

/** How far the water may warm up during a run; common practice. */
export const swing = si('temperatureDifference', '10 F')
