import type { FlightSetup } from '../../../../engine/physics/flight/index';

const degree = Math.PI / 180;
const KNOTS = 21;

/** Engine curves that are straight lines in airspeed: thrust a − b V, one torque, one shaft speed. */
export function straightCurves(staticThrust: number, loss: number, torque: number, shaftSpeed: number) {
  const curves = new Float64Array(3 * KNOTS);
  for (let k = 0; k < KNOTS; k++) {
    curves[k] = staticThrust - loss * 5 * k;
    curves[KNOTS + k] = torque;
    curves[2 * KNOTS + k] = shaftSpeed;
  }
  return { curves, thrustAt: 0, torqueAt: KNOTS, shaftSpeedAt: 2 * KNOTS, stride: 1, knotStep: 5, knotCount: KNOTS };
}

const area = (0.5 * (0.515 + 0.485) * (0.23 + 0.2)) as number;
const aspectRatio = 1 / area;
const meanChord = (2 / 3) * 0.23 * ((1 + 0.2 / 0.23 + (0.2 / 0.23) ** 2) / (1 + 0.2 / 0.23));
const x = 5.7 / (Math.PI * aspectRatio);
const nose = -0.17;
const tail = 0.6;
const depth = 0.055 / (tail - nose);

/** The invented Quern 25 as the computed check has it: no incidence, no zero-lift angle, body side of even depth. */
export const quern: FlightSetup = {
  mass: 0.85,
  gravity: 9.80665,
  cgX: 0.046,
  cgY: 0.01,
  cgZ: 0,
  inertiaSpan: 0.02,
  inertiaUp: 0.038,
  density: 1.225,
  kinematicViscosity: 1.46e-5,
  height: 1.5,
  handleReach: 0.6,
  guideRadius: 18.9,
  lineCount: 2,
  lineDiameter: 0.00038,
  lineLinearMass: 0.0006,
  lineDragCoefficient: 1.15,
  lineDragFactor: 1,
  guideX: 0.062,
  guideY: -0.515,
  guideZ: 0,
  wingArea: area,
  wingQuarterChord: meanChord / 4,
  meanChord,
  wingSlope: 5.7 / (Math.sqrt(1 + x * x) + x),
  wingIncidence: 0,
  zeroLiftAngle: 0,
  momentCoefficient: 0,
  profileDrag: 0.012,
  inducedFactor: 1 / (Math.PI * aspectRatio * 0.85),
  liftLimit: 1.1,
  sectionSpeed: 25,
  dragPower: 0,
  liftPower: 0,
  dragSlope: 0,
  liftStation: -0.0085,
  liftStationTurn: 0,
  dragStation: -0.0064,
  dragStationTurn: 0,
  tailArea: 0.036,
  tailQuarterChord: 0.47,
  tailSlope: 3.8,
  downwash: (2 * 5.7) / (Math.sqrt(1 + x * x) + x) / (Math.PI * aspectRatio),
  tailIncidence: 0,
  elevatorEffect: 0.6,
  tailInducedFactor: 1 / (Math.PI * 3.8 * 0.85),
  tailDragArea: 0,
  finArea: 0.012,
  finQuarterChord: 0.52,
  finZ: 0,
  finSlope: 2.5,
  rudderAngle: 0,
  rudderEffect: 0.5,
  sideArea: 0.055,
  sideMoment: (depth * (tail ** 2 - nose ** 2)) / 2,
  sideSecondMoment: (depth * (tail ** 3 - nose ** 3)) / 3,
  sideSlope: 0.6,
  slenderCouple: 0,
  crossFlowDrag: 1.2,
  dragArea: 0.0035,
  engineX: -0.15,
  engineY: 0,
  engineZ: 0,
  sideThrust: 1.5 * degree,
  downThrust: 0,
  rotorInertia: 0,
  turning: 1,
  spinning: 1,
  ...straightCurves(8, 0.17, 0.25, 1200),
};

export { degree };
