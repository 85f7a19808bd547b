export {
  dryAirDensity,
  EARTH_RADIUS,
  GAS_CONSTANT_OF_DRY_AIR,
  geopotentialHeight,
  LAPSE_RATE,
  SEA_LEVEL_PRESSURE,
  SEA_LEVEL_TEMPERATURE,
  STANDARD_GRAVITY,
  soundSpeed,
  standardPressure,
  standardTemperature,
  viscosityOfAir,
} from './air';
export { type Ballast, type BallastStatus, ballastAt, cgShiftByAdding, levelWingsCg, shiftOf } from './ballast';
export { type BodyStation, measureSide, type SideMeasures, slabWettedArea, slenderBodyCouple } from './body';
export { cylinderDragCoefficient } from './cylinder-drag';
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
  FUELS,
  type FuelFacts,
  fuelFlow,
  type Motor,
  motorCurrent,
  motorTorque,
  shaftSpeedAt,
  type TorqueCurve,
  type TwoStrokePoints,
  tachometerTorque,
  throttleFor,
  twoStrokeTorque,
} from './engines/index';
export {
  type FlightSetup,
  type FlightSolution,
  type FlightStatus,
  newSolution,
  solveFlight,
} from './flight/index';
export {
  alongLeg,
  energyToYield,
  type GearLeg,
  gearLeg,
  type LegAnswer,
  sinkSpeedToYield,
  type Vector,
} from './gear-wire';
export {
  greatestStep,
  mainWheelShare,
  type NoseOver,
  noseOverRatio,
  ROLLING,
  restPitch,
  type SidePlace,
  type Stand,
  standAt,
} from './ground';
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
export { lineDrag, type TurningLines, wholeLineDrag } from './line-drag';
export { LINE_KINDS, type LineKind, lineBreakingLoad, lineLinearMass, lineStiffness } from './line-kinds';
export { LINE_MEASURES, type LineFittings, type LineMakeup, type LineMeasure, lineMakeup } from './line-makeup';
export { lineStretch, linesMass, linesPressDown, pullAtHandle, stretchAngle } from './lines';
export { FOLD_NAMES, foldParts, momentsAboutCg } from './mass';
export { type LapPower, lapPower, type TimedLap, thrustAtPower } from './measured-lap';
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
export {
  ADVANCE_KNOTS,
  type Annulus,
  advanceStepOf,
  alongBlade,
  type BladeShape,
  bladeAngle,
  idealEfficiency,
  leastPower,
  newAnnulus,
  newAnnulusFlow,
  newPropellerState,
  PROPELLER_KNOTS,
  type PreparedPropeller,
  type Propeller,
  type PropellerAir,
  type PropellerState,
  type PropellerTable,
  powerCoefficientAt,
  preparePropeller,
  propellerEfficiency,
  propellerMass,
  propellerState,
  setAnnulus,
  shapedPropeller,
  solveAnnulus,
  tableThrust,
  tableTorque,
  tabulateMeasured,
  tabulatePropeller,
  thrustCoefficientAt,
  zeroThrustAdvance,
} from './propeller/index';
export { type SectionFacts, sectionAt, VISCOUS_LIFT_DRAG, WING_SHARE_OF_SECTION_LIFT } from './section';
export { MUSIC_WIRE_ELASTIC_SHARE, musicWireModuli, musicWireStrength, stainlessWireStrength } from './spring-wire';
export {
  type Arm,
  BALSA_SHEAR,
  BIRCH_PLY_BEARING,
  bearingHolds,
  bellcrankHolds,
  glueHolds,
  MAPLE_ACROSS,
  NYLON_STRENGTH,
  pivotHolds,
  preload,
  STEEL_BOLT_YIELD,
  strandsHold,
  threadStressArea,
  tighteningTorque,
} from './strength';
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
export {
  beyond,
  dot,
  type FlightAttitude,
  type FuelSurface,
  fuelSurface,
  gravityAtRest,
  gravityInFlight,
  headAt,
  type Place,
  type Polyhedron,
  placed,
  placedBody,
  prism,
  type Solid,
  solidOf,
  type TankPlace,
  type TankSize,
  tankShape,
  volumeBeyond,
} from './tank/index';
export { discArea, propellerInertia, STATIC_MERIT, staticTorque, thrustLaw, zeroThrustSpeed } from './thrust-law';
export {
  bestRelease,
  type Extreme,
  extremeOf,
  type FloorWind,
  flyGlide,
  flyWindLap,
  type Glide,
  type GlideStatus,
  type Launch,
  type LaunchStatus,
  type LineProfile,
  newGlide,
  newLaunch,
  newWindLap,
  type Run,
  rollOut,
  runFrom,
  STRONGEST_WIND,
  stallSpeed,
  stoppedPropellerDragArea,
  type Wind,
  type WindLap,
  type WindLapStatus,
  windAtFloor,
  withEngineOff,
} from './wind/index';
