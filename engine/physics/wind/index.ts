export {
  BLADE_SHARE,
  LANDING_OVER_STALL,
  rollOut,
  SQUARE_PLATE_DRAG,
  stallSpeed,
  stoppedPropellerDragArea,
  withEngineOff,
} from './engine-off';
export { type Extreme, extremeOf } from './extremes';
export { type FloorWind, STRONGEST_WIND, windAtFloor } from './floor';
export { flyGlide, type Glide, type GlideStatus, newGlide } from './glide';
export { flyWindLap } from './lap';
export { bestRelease, type Launch, type LaunchStatus, newLaunch, RELEASES, type Run, runFrom } from './launch';
export { type LineProfile, linesByWind, linesInWind, newLinesByWind } from './lines-in-wind';
export { newWindRoom } from './room';
export { shutOffs } from './shut-off';
export { CLOSED, COARSE, LAP_PLACES, newWindLap, type Wind, type WindLap, type WindLapStatus } from './wind-lap';
