export {
  type Bellcrank,
  type BellcrankState,
  handleAngleFor,
  handleDifference,
  handleTorque,
  newBellcrankState,
  turnBellcrank,
} from './bellcrank';
export { type Cable, cableLever, cablePulled, turnToPull } from './cable';
export {
  type ElevatorAir,
  hingeByDeflection,
  hingeByIncidence,
  hingeMoment,
  tailLiftAfter,
} from './hinge-moment';
export { type HeldControl, lineDifference, pullToHold } from './hold';
export {
  elevatorRoot,
  type Linkage,
  type LinkageState,
  linkageAt,
  newLinkageState,
  senseOf,
  turnFor,
  turnForElevator,
} from './linkage';
export { branchAt, closePushrod, newPushrodState, type Pushrod, type PushrodState, pushrodBetween } from './pushrod';
export { newTravel, TRAVEL_ENDS, type Travel, type TravelLimits, type TravelStatus, travelOf } from './travel';
