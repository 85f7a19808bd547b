export { atNeedle, type BestNeedle, bestNeedle, NEEDLE_SETTINGS, type Needle } from './needle';
export { correctedLapTime, inStandardAir, thrustInStandardAir } from './standard-air';
export {
  lapsOfFilling,
  pitTimeOf,
  type Race,
  type RaceAnswer,
  type RaceStatus,
  raceOf,
  type Stint,
  stintsOf,
} from './stints';
