import { si } from '../../units/index.js'

/** The equations of the fuel gas code are written in these units; amounts are turned into them and back. */
export const inch = si('length', '1 in')
export const foot = si('length', '1 ft')
export const cubicFootPerHour = si('volumeFlow', '1 cfh')
export const inchOfWater = si('pressure', '1 in wc')
export const psi = si('pressure', '1 psi')

/** Below this, gauge, the code takes its equation for low pressure; Pa. */
export const lowPressure = si('pressure', '1.5 psi')
