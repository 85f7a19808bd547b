export { type Annulus, newAnnulus, newAnnulusFlow, solveAnnulus } from './annulus';
export { alongBlade, type BladeShape, bladeAngle, type Propeller, shapedPropeller } from './blade';
export {
  newPropellerState,
  type PreparedPropeller,
  type PropellerAir,
  type PropellerState,
  preparePropeller,
  propellerState,
  setAnnulus,
  stillTorque,
} from './blade-elements';
export { propellerMass, ROOT_THICKNESS, SECTION_FULLNESS, TIP_THICKNESS } from './blade-mass';
export { BLADE_SECTION, DRAG, LIFT, newSectionFlow, sectionAtAngle, sectionInFlow } from './section';
export {
  ADVANCE_KNOTS,
  advanceStepOf,
  PROPELLER_KNOTS,
  type PropellerTable,
  powerCoefficientAt,
  propellerEfficiency,
  tableThrust,
  tableTorque,
  tabulateMeasured,
  tabulatePropeller,
  thrustCoefficientAt,
  zeroThrustAdvance,
} from './table';
export {
  ANGLE_SPREAD,
  CHORD_SPREAD,
  newTuning,
  type PulledState,
  THRUST_BAND,
  type Tuning,
  tunedBlade,
  tunePropeller,
} from './tune';
