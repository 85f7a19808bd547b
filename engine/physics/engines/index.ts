export { CHARGE_EXPONENT, chargeShare, PACK_EXPONENT, propellerShare, shaftShare } from './breathing';
export { FUELS, type FuelFacts, fuelFlow } from './fuel';
export { type Motor, motorCurrent, motorTorque, throttleFor } from './motor';
export { motorRunning, type Running, readRunning, runsTooFast, tellSlope, twoStrokeRunning } from './running';
export { shaftSpeedAt } from './shaft-speed';
export {
  TORQUE_SHARE_AT_REST,
  type TorqueCurve,
  type TwoStrokePoints,
  tachometerTorque,
  twoStrokeTorque,
} from './torque';
