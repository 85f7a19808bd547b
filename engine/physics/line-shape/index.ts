export { bowOf, endsOf, type LineBow, type LineEndForces } from './bow';
export { type Catenary, catenary } from './catenary';
export { lineLoad, type TurningBundle } from './load';
export { type AxisPlace, type LineEnds, type LineShape, lineShape, SHAPE_STEPS } from './shape';
export { type UnevenPair, unevenPair } from './uneven';
