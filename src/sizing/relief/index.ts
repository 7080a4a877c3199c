export { reliefSteam, reliefSteamBySurface, type TubeKind } from './relief-capacity.js'
export { smallestReliefInlet } from './relief-inlet.js'
export { mostSecondSetting, mostWhileRelieving } from './relief-pressure.js'
