export { balance, CROSS_FLOW_FROM } from './balance';
export { type Constants, newConstants, prepare, STEEPEST, wingDragShare } from './constants';
export { fullStep, newStep, type Step, trimStep } from './elimination';
export { type Balance, newBalance } from './loads';
export { circleRadius, type FlightSetup, liftLimitAt, newSetup, type SetupRoom } from './setup';
export { type FlightMethod, type FlightSolution, type FlightStatus, newSolution } from './solution';
export { SETTLED_WITHIN, solveFlight } from './solve';
export { newState, type State } from './state';
export { trimAtSpeed } from './trim-at';
