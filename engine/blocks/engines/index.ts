export { electric } from './electric';
export { measuredLap } from './measured-lap';
export { tachometer } from './tachometer';
export { thrustLaw } from './thrust-law';
export { twoStroke } from './two-stroke';
