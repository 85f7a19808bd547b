export { newWindLoads, type WindLoads, type WindThere, windBalance } from './balance';
export { type Extreme, extremeOf } from './extremes';
export { type FloorWind, STRONGEST_WIND, windAtFloor } from './floor';
export { flyWindLap, newWindLap, type Wind, type WindLap, type WindLapStatus } from './lap';
export { type LineProfile, lineDragByWind } from './lines-in-wind';
