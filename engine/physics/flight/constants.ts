import { positive, within } from '../domain';
import { type LineDragLaw, newLineDragLaw, prepareLineDrag } from '../line-drag';
import { circleRadius, type FlightSetup } from './setup';

/**
 * What the balance needs of a set-up, computed once a solve. Stations are turned into arms from the CG; `ahead` is
 * forward positive.
 */
export interface Constants {
  setup: FlightSetup;
  weight: number;
  /** R, and sin φ, cos φ, tan φ of the elevation. */
  radius: number;
  sinElevation: number;
  cosElevation: number;
  tanElevation: number;
  /** Mass of the lines, kg; their press on the guide is pressStill + pressTurning V². */
  linesMass: number;
  pressStill: number;
  pressTurning: number;
  readonly line: LineDragLaw;
  /** Guide behind the CG (Δ), inboard of it (a), above it (h_g). */
  guideBehind: number;
  guideInboard: number;
  guideAbove: number;
  /** C_D A of the wing's profile drag at its section speed and of all other, m², and yaw moments over q, −C_D A (y_cg − y), m³. */
  wingDragArea: number;
  wingDragMoment: number;
  /** What the wing's moment grows by with V/u. */
  wingDragTurn: number;
  otherDragArea: number;
  otherDragMoment: number;
  /** 1/V_r, and ½(1 + n) and ½(1 − n) of the quotient that stands for (V/V_r)^n (`nearPower`). */
  perSectionSpeed: number;
  dragAbove: number;
  dragBelow: number;
  /** S a, m²; quarter chord of the wing ahead of the CG and of the tail behind it, lift outboard of it, m. */
  wingStrength: number;
  wingAhead: number;
  tailBehind: number;
  liftOutboard: number;
  /** κ/R: how far the lift moves outboard because the air is faster there, m for V = u. */
  liftTurn: number;
  /** c̄ S c_m, m³. */
  wingMoment: number;
  /** Side force over q: sideSlip β + sideTurn r̂ + sideSet, and its yaw moment likewise. */
  sideSlip: number;
  sideTurn: number;
  sideSet: number;
  yawSlip: number;
  yawTurn: number;
  yawSet: number;
  /** Roll moment of the fin over q likewise: its side force acts above the CG. */
  rollSlip: number;
  rollTurn: number;
  rollSet: number;
  crossForce: number;
  crossYaw: number;
  cosSideThrust: number;
  sinSideThrust: number;
  sinDownThrust: number;
  cosDownThrust: number;
  /** Moments of unit thrust about the body's own axes. */
  thrustRoll: number;
  thrustPitch: number;
  thrustYaw: number;
  /** (I_up − I_span)/R². */
  inertiaTurn: number;
}

export function newConstants(): Constants {
  return {
    // Filled by `prepare` before anything reads it.
    setup: undefined as unknown as FlightSetup,
    weight: Number.NaN,
    radius: Number.NaN,
    sinElevation: Number.NaN,
    cosElevation: Number.NaN,
    tanElevation: Number.NaN,
    linesMass: Number.NaN,
    pressStill: Number.NaN,
    pressTurning: Number.NaN,
    line: newLineDragLaw(),
    guideBehind: Number.NaN,
    guideInboard: Number.NaN,
    guideAbove: Number.NaN,
    wingDragArea: Number.NaN,
    wingDragMoment: Number.NaN,
    wingDragTurn: Number.NaN,
    otherDragArea: Number.NaN,
    otherDragMoment: Number.NaN,
    perSectionSpeed: Number.NaN,
    dragAbove: Number.NaN,
    dragBelow: Number.NaN,
    wingStrength: Number.NaN,
    wingAhead: Number.NaN,
    tailBehind: Number.NaN,
    liftOutboard: Number.NaN,
    liftTurn: Number.NaN,
    wingMoment: Number.NaN,
    sideSlip: Number.NaN,
    sideTurn: Number.NaN,
    sideSet: Number.NaN,
    yawSlip: Number.NaN,
    yawTurn: Number.NaN,
    yawSet: Number.NaN,
    rollSlip: Number.NaN,
    rollTurn: Number.NaN,
    rollSet: Number.NaN,
    crossForce: Number.NaN,
    crossYaw: Number.NaN,
    cosSideThrust: Number.NaN,
    sinSideThrust: Number.NaN,
    sinDownThrust: Number.NaN,
    cosDownThrust: Number.NaN,
    thrustRoll: Number.NaN,
    thrustPitch: Number.NaN,
    thrustYaw: Number.NaN,
    inertiaTurn: Number.NaN,
  };
}

/** Highest sin φ at which a height counts as in reach of the lines. */
export const STEEPEST = 0.985;

/**
 * Fills `c` from a set-up. False where the height is out of reach: |h| > 0.985 R (80° of elevation). Allocates nothing.
 */
export function prepare(s: FlightSetup, c: Constants): boolean {
  const radius = positive('radius of the circle', circleRadius(s));
  const sine = s.height / radius;
  if (!(Math.abs(sine) <= STEEPEST)) return false;
  const cosine = Math.sqrt(1 - sine * sine);
  c.setup = s;
  c.weight = positive('mass', s.mass) * positive('gravity', s.gravity);
  c.radius = radius;
  c.sinElevation = sine;
  c.cosElevation = cosine;
  c.tanElevation = sine / cosine;
  const linesMass = s.lineCount * s.lineLinearMass * (s.guideRadius - s.handleReach);
  c.linesMass = linesMass;
  // F_down = ½ m g cos φ (1 + r_h/R_g) + ⅓ m (V²/R) tan φ
  c.pressStill = 0.5 * linesMass * s.gravity * cosine * (1 + s.handleReach / s.guideRadius);
  c.pressTurning = (linesMass * c.tanElevation) / (3 * radius);
  prepareLine(s, c.line);
  c.guideBehind = s.guideX - s.cgX;
  c.guideInboard = s.cgY - s.guideY;
  c.guideAbove = s.guideZ - s.cgZ;
  prepareWing(s, c);
  prepareSide(s, c);
  prepareThrust(s, c);
  c.inertiaTurn = (s.inertiaUp - s.inertiaSpan) / (radius * radius);
  return true;
}

/** Drag of everything but the lines, lift and moment of the wing, and where they act. */
function prepareWing(s: FlightSetup, c: Constants): void {
  const wingDrag = positive('wing area', s.wingArea) * s.profileDrag;
  c.wingDragArea = wingDrag;
  c.wingDragMoment = wingDrag * (s.dragStation - s.cgY);
  c.wingDragTurn = (wingDrag * s.dragStationTurn) / c.radius;
  c.otherDragArea = s.dragArea + s.tailDragArea;
  c.otherDragMoment = -c.otherDragArea * s.cgY;
  c.perSectionSpeed = 1 / positive('airspeed of the section values', s.sectionSpeed);
  c.dragAbove = 0.5 * (1 + within('power of the profile drag', s.dragPower, -0.9, 0.9));
  c.dragBelow = 0.5 * (1 - s.dragPower);
  c.wingStrength = s.wingArea * positive('wing lift slope', s.wingSlope);
  c.wingAhead = s.cgX - s.wingQuarterChord;
  c.tailBehind = s.tailQuarterChord - s.cgX;
  c.liftOutboard = s.liftStation - s.cgY;
  c.liftTurn = s.liftStationTurn / c.radius;
  c.wingMoment = s.wingArea * s.meanChord * s.momentCoefficient;
}

const lineScratch = {
  count: 0,
  diameter: 0,
  handleReach: 0,
  guideRadius: 0,
  dragCoefficient: 0,
  dragFactor: 0,
  kinematicViscosity: 0,
  density: 0,
};

function prepareLine(s: FlightSetup, line: LineDragLaw): void {
  lineScratch.count = s.lineCount;
  lineScratch.diameter = s.lineDiameter;
  lineScratch.handleReach = s.handleReach;
  lineScratch.guideRadius = s.guideRadius;
  lineScratch.dragCoefficient = s.lineDragCoefficient;
  lineScratch.dragFactor = s.lineDragFactor;
  lineScratch.kinematicViscosity = s.kinematicViscosity;
  lineScratch.density = s.density;
  prepareLineDrag(lineScratch, line);
}

/**
 * Fin and body strips. A strip at ξ ahead of the CG meets the air at β + r̂ ξ/R (the flow is curved), so with ∫ dS, ∫ ξ
 * dS, ∫ ξ² dS over the side: Y/q = a_b (β ∫ dS + r̂/R ∫ ξ dS), N/q = a_b (β ∫ ξ dS + r̂/R ∫ ξ² dS) + C β. The fin at
 * l_f behind the CG: Y/q = S_f a_f (β − r̂ l_f/R − k_r δ_r), N = −l_f Y; h_f above it, so that it rolls the model by h_f Y.
 */
function prepareSide(s: FlightSetup, c: Constants): void {
  const first = s.cgX * s.sideArea - s.sideMoment;
  const second = s.cgX * s.cgX * s.sideArea - 2 * s.cgX * s.sideMoment + s.sideSecondMoment;
  const finBehind = s.finQuarterChord - s.cgX;
  const fin = s.finArea * s.finSlope;
  const rudder = s.rudderEffect * s.rudderAngle;
  c.sideSlip = fin + s.sideSlope * s.sideArea;
  c.sideTurn = (s.sideSlope * first - fin * finBehind) / c.radius;
  c.sideSet = -fin * rudder;
  c.yawSlip = s.sideSlope * first + s.slenderCouple - finBehind * fin;
  c.yawTurn = (s.sideSlope * second + finBehind * finBehind * fin) / c.radius;
  c.yawSet = finBehind * fin * rudder;
  const above = s.finZ - s.cgZ;
  c.rollSlip = above * fin;
  c.rollTurn = (-above * fin * finBehind) / c.radius;
  c.rollSet = -above * fin * rudder;
  c.crossForce = s.crossFlowDrag * s.sideArea;
  c.crossYaw = s.crossFlowDrag * first;
}

/**
 * Moments of unit thrust at (l_e ahead, y_e − y_cg outboard, z_e − z_cg up), turned out by τ and down by η, about the
 * body's axes.
 */
function prepareThrust(s: FlightSetup, c: Constants): void {
  const ct = Math.cos(s.sideThrust);
  const st = Math.sin(s.sideThrust);
  const forward = ct * Math.cos(s.downThrust);
  const up = -ct * Math.sin(s.downThrust);
  const ahead = s.cgX - s.engineX;
  const outboard = s.engineY - s.cgY;
  const above = s.engineZ - s.cgZ;
  c.cosSideThrust = ct;
  c.sinSideThrust = st;
  c.cosDownThrust = Math.cos(s.downThrust);
  c.sinDownThrust = Math.sin(s.downThrust);
  c.thrustRoll = above * st - outboard * up;
  c.thrustPitch = ahead * up - above * forward;
  c.thrustYaw = ahead * st - outboard * forward;
}

/** Profile drag of the wing at an airspeed (m/s) over that at its section speed and the same q: `nearPower` of their ratio. */
export function wingDragShare(c: Constants, airspeed: number): number {
  const x = airspeed * c.perSectionSpeed - 1;
  return (1 + c.dragAbove * x) / (1 + c.dragBelow * x);
}
