export {
  dryAirDensity,
  EARTH_RADIUS,
  GAS_CONSTANT_OF_DRY_AIR,
  geopotentialHeight,
  LAPSE_RATE,
  SEA_LEVEL_PRESSURE,
  SEA_LEVEL_TEMPERATURE,
  STANDARD_GRAVITY,
  standardPressure,
  standardTemperature,
  viscosityOfAir,
} from './air';
export { type Ballast, type BallastStatus, ballastAt, levelWingsCg, shiftOf } from './ballast';
export { type BodyStation, measureSide, type SideMeasures, slabWettedArea, slenderBodyCouple } from './body';
export {
  bodyFormFactor,
  frictionDragArea,
  ITEM_DRAG,
  laminarFriction,
  MODEL_TRANSITION,
  plateFriction,
  surfaceFormFactor,
  turbulentFriction,
} from './drag';
export {
  foldLayers,
  LAYER_STRIDE,
  STACK_NAMES,
  surfaceStiffness,
  writeMassLayer,
  writeMaterialLayer,
} from './laminate';
export { datcomSlope, helmboldSlope, inducedDrag, liftingLineSlope } from './lift-slope';
export { LIFTING_LINE_TERMS, type LiftingLine, liftingLine, liftingLineOfChords } from './lifting-line';
export { FOLD_NAMES, foldParts, momentsAboutCg } from './mass';
export { moistAirDensity, saturationPressure } from './moist-air';
export {
  ESTIMATE_SPREAD,
  finishMass,
  PART_STRIDE,
  type PartRow,
  rodMass,
  SCALE_SPREAD,
  STATION_SPREAD,
  sheetMass,
  solidMass,
  stackMass,
  writePart,
} from './part';
export { chordLoadStation, measurePlanform, type Planform, type PlanformMeasures } from './planform';
export { type SectionFacts, sectionAt, VISCOUS_LIFT_DRAG, WING_SHARE_OF_SECTION_LIFT } from './section';
export {
  downwashGradient,
  FIN_END_PLATE,
  FLAT_PLATE_SECTION_SLOPE,
  flapEffect,
  hingedEffect,
  type LiftingPiece,
  neutralPoint,
  neutralPointShare,
  pitchingMoment,
  tailVolume,
} from './tail';
