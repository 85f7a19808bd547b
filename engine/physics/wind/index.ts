export { newWindLoads, windBalance } from './balance';
export { rollOut, stallSpeed, stoppedPropellerDragArea, withEngineOff } from './engine-off';
export { type Extreme, extremeOf } from './extremes';
export { type FloorWind, STRONGEST_WIND, windAtFloor } from './floor';
export { flyGlide, type Glide, type GlideStatus, newGlide } from './glide';
export { flyWindLap } from './lap';
export { bestRelease, type Launch, type LaunchStatus, newLaunch, type Run, runFrom } from './launch';
export { type LineProfile, lineDragByWind, linesInWind } from './lines-in-wind';
export { newWindLap, type Wind, type WindLap, type WindLapStatus } from './wind-lap';
