import type { FlightSetup, FlightSolution } from '../../../../engine/physics/flight/index';

/**
 * A second balance of forces and moments, written in the axes of the world with plain vectors and cross products, to
 * hold the solver against. Origin at the pilot's axis at handle height, Z up; the model stands at Y = 0. It takes a
 * solution's speed, angles, pull and lifts and returns what is left over of Newton's and Euler's laws.
 */

type Vector = readonly [number, number, number];
const add = (...all: readonly Vector[]): Vector =>
  all.reduce<Vector>((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [0, 0, 0]);
const times = (k: number, a: Vector): Vector => [k * a[0], k * a[1], k * a[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Vector): Vector => times(1 / Math.sqrt(dot(a, a)), a);
/** Turns v from a toward b (a, b square to each other) by an angle. */
function turn(v: Vector, a: Vector, b: Vector, angle: number): Vector {
  const along = dot(v, a);
  const aside = dot(v, b);
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  return add(v, times(along * (c - 1) - aside * s, a), times(along * s + aside * (c - 1), b));
}

/** A strip of the body's side: station aft of the datum and area. */
export interface Strip {
  readonly x: number;
  readonly area: number;
}

export interface WorldCase {
  readonly setup: FlightSetup;
  readonly strips: readonly Strip[];
  /** Seen from above. */
  readonly clockwise?: boolean;
  /** The propeller turns the other way than clockwise seen from behind. */
  readonly reversed?: boolean;
}

export interface LeftOver {
  /** Force over weight. */
  readonly force: number;
  /** Moment over weight × 1 m. */
  readonly moment: number;
  /** Drag of the lines by moments about the pilot against the pull's trail, over weight. */
  readonly lines: number;
  /** Lift that the wing gives at its angle against the lift it has, over weight. */
  readonly wing: number;
  /** Lift that the tail gives at its angle against the lift it has, over weight. */
  readonly tail: number;
}

const clean = (s: FlightSetup, re: number): number =>
  Number.isNaN(s.lineDragCoefficient)
    ? 11 * re ** -0.75 + 0.9 * (1 - Math.exp(-1000 / re)) + 1.2 * (1 - Math.exp(-((re / 4500) ** 0.7)))
    : s.lineDragCoefficient;

/** Simpson's rule with 4000 steps. */
function sum(f: (x: number) => number, from: number, to: number): number {
  const n = 4000;
  const h = (to - from) / n;
  let total = f(from) + f(to);
  for (let k = 1; k < n; k++) total += (k % 2 === 0 ? 2 : 4) * f(from + k * h);
  return (total * h) / 3;
}

function curveAt(s: FlightSetup, at: number, V: number): number {
  // The cases of these tests have straight curves, so two knots give them.
  const low = s.curves[at]!;
  const slope = (s.curves[at + 1]! - low) / s.knotStep;
  return low + slope * V;
}

export function leftOver({ setup: s, strips, clockwise, reversed }: WorldCase, x: FlightSolution): LeftOver {
  const weight = s.mass * s.gravity;
  const R = s.guideRadius + s.cgY - s.guideY;
  const phi = Math.asin(s.height / R);
  const V = x.speed;
  const q = 0.5 * s.density * V * V;
  const vertical: Vector = [0, 0, 1];
  const t: Vector = [0, clockwise ? -1 : 1, 0];
  const o: Vector = [Math.cos(phi), 0, Math.sin(phi)];
  const u: Vector = [-Math.sin(phi), 0, Math.cos(phi)];
  const cg = times(R, o);
  const spin = times(((clockwise ? -1 : 1) * V) / (R * Math.cos(phi)), vertical);

  // Body: rolled about the path, turned nose-out, pitched up.
  const outboard = turn(o, o, times(-1, u), x.outboardLow);
  const rolledUp = turn(u, u, o, x.outboardLow);
  const heading = turn(t, t, outboard, x.sideslip);
  const span = turn(outboard, t, outboard, x.sideslip);
  const nose = turn(heading, heading, rolledUp, x.pitch);
  const up = turn(rolledUp, heading, rolledUp, x.pitch);
  const at = (ahead: number, out: number, above: number): Vector =>
    add(times(ahead, nose), times(out, span), times(above, up));
  /** A point given along the path, the rolled span and the rolled upright, as air forces are. */
  const by = (ahead: number, out: number): Vector => add(times(ahead, t), times(out, outboard));

  const loads: { force: Vector; place: Vector }[] = [];
  const couples: Vector[] = [];
  const load = (force: Vector, place: Vector = [0, 0, 0]): void => {
    loads.push({ force, place });
  };
  /** A couple in the sense in which `from` turns toward `to`. */
  const couple = (size: number, from: Vector, to: Vector): void => {
    couples.push(times(size, cross(from, to)));
  };

  load(times(-weight, vertical));

  // Propeller.
  const flatNose = turn(nose, nose, times(-1, up), s.downThrust);
  const shaft = turn(flatNose, flatNose, span, s.sideThrust);
  load(times(curveAt(s, s.thrustAt, V), shaft), at(s.cgX - s.engineX, s.engineY - s.cgY, s.engineZ - s.cgZ));
  const handed = reversed ? -1 : 1;
  couples.push(times(-handed * curveAt(s, s.torqueAt, V), shaft));
  const geared = s.spinning * s.turning;
  const rotor = times(geared * handed * s.rotorInertia * curveAt(s, s.shaftSpeedAt, V), shaft);

  // Wing and tail.
  const yL = s.liftStation + s.liftStationTurn / R;
  load(times(x.wingLift, rolledUp), by(s.cgX - s.wingQuarterChord, yL - s.cgY));
  load(times(x.tailLift, rolledUp), by(s.cgX - s.tailQuarterChord, -s.cgY));
  couple(q * s.wingArea * s.meanChord * s.momentCoefficient, t, rolledUp);
  const attack = x.pitch + s.wingIncidence - s.zeroLiftAngle;
  /** How fast the tail moves down with the turning of the model, over V. */
  const tailDown = -dot(cross(spin, by(s.cgX - s.tailQuarterChord, 0)), rolledUp) / V;
  const tailAngle = x.pitch + s.tailIncidence - s.downwash * attack + tailDown - s.elevatorEffect * x.elevator;

  // Drag, each where it acts.
  const back = (size: number, out: number): void => load(times(-size, t), by(0, out - s.cgY));
  const faster = V / s.sectionSpeed - 1;
  const byReynolds = (1 + ((1 + s.dragPower) / 2) * faster) / (1 + ((1 - s.dragPower) / 2) * faster);
  back(q * s.wingArea * s.profileDrag * byReynolds, s.dragStation + s.dragStationTurn / R);
  const CL = x.wingLift / (q * s.wingArea);
  back(q * s.wingArea * (s.dragSlope * CL + s.inducedFactor * CL * CL), yL);
  back(q * (s.dragArea + s.tailDragArea), 0);
  const lean = (s.downwash * x.wingLift) / (q * s.wingArea * s.wingSlope);
  back((s.tailInducedFactor * x.tailLift ** 2) / (q * s.tailArea) + x.tailLift * lean, 0);

  // Side forces of body and fin, each in the air that it meets: the model turns, so that air comes more from outboard
  // further ahead.
  const slip = (behindDatum: number): number => x.sideslip - dot(cross(spin, by(s.cgX - behindDatum, 0)), outboard) / V;
  for (const strip of strips) {
    load(times(q * s.sideSlope * strip.area * slip(strip.x), span), at(s.cgX - strip.x, 0, 0));
  }
  const finAngle = slip(s.finQuarterChord) - s.rudderEffect * s.rudderAngle;
  load(times(q * s.finArea * s.finSlope * finAngle, span), at(s.cgX - s.finQuarterChord, 0, s.finZ - s.cgZ));
  couple(q * s.slenderCouple * x.sideslip, nose, span);
  // Square of the sine less that at 10° from 15° on, with a parabola that meets it and zero without a corner.
  const [ten, fifteen] = [Math.sin(Math.PI / 18), Math.sin(Math.PI / 12)];
  const begin = ten ** 2 / fifteen;
  const sine = Math.abs(Math.sin(x.sideslip));
  if (sine > begin) {
    const rounded = sine < fifteen ? ((sine - begin) ** 2 * fifteen) / (fifteen - begin) : sine ** 2 - ten ** 2;
    const size = Math.sign(x.sideslip) * rounded;
    for (const strip of strips) load(times(q * s.crossFlowDrag * strip.area * size, span), at(s.cgX - strip.x, 0, 0));
  }

  // Lines: the pull leaves the guide trailing ε behind the radius through the guide, and pressed down.
  const guide = at(s.cgX - s.guideX, s.guideY - s.cgY, s.guideZ - s.cgZ);
  const fromPilot = add(cg, guide);
  const radial = unit(add(times(dot(fromPilot, o), o), times(dot(fromPilot, t), t)));
  const forward = turn(t, t, times(-1, o), Math.atan2(dot(fromPilot, t), dot(fromPilot, o)));
  const lineWeight = s.lineCount * s.lineLinearMass * (s.guideRadius - s.handleReach) * s.gravity;
  const press =
    0.5 * lineWeight * Math.cos(phi) * (1 + s.handleReach / s.guideRadius) +
    ((lineWeight / s.gravity) * (V * V * Math.tan(phi))) / (3 * R);
  const flat = Math.sqrt(x.pull ** 2 - press ** 2);
  load(
    add(times(-flat * Math.cos(x.lineTrail), radial), times(-flat * Math.sin(x.lineTrail), forward), times(-press, u)),
    guide,
  );
  const element = (r: number): number => {
    const speed = (V * r) / R;
    const drag = clean(s, (speed * s.lineDiameter) / s.kinematicViscosity) * s.lineDiameter * s.lineDragFactor;
    return s.lineCount * 0.5 * s.density * drag * speed * speed * r;
  };
  const lineMoment = sum(element, s.handleReach || 1e-9, s.guideRadius);
  const trailMoment = flat * Math.sin(x.lineTrail) * Math.hypot(dot(fromPilot, o), dot(fromPilot, t));

  // Newton and Euler: m a = m ω × (ω × r), dH/dt = ω × H.
  const acceleration = cross(spin, cross(spin, cg));
  const force = add(...loads.map((l) => l.force), times(-s.mass, acceleration));
  const momentum = add(
    times(s.inertiaSpan * dot(spin, outboard), outboard),
    times(s.inertiaUp * dot(spin, rolledUp), rolledUp),
    rotor,
  );
  const moment = add(...loads.map((l) => cross(l.place, l.force)), ...couples, times(-1, cross(spin, momentum)));
  return {
    force: Math.sqrt(dot(force, force)) / weight,
    moment: Math.sqrt(dot(moment, moment)) / weight,
    lines: Math.abs(lineMoment - trailMoment) / s.guideRadius / weight,
    wing: Math.abs(x.wingLift - q * s.wingArea * s.wingSlope * attack) / weight,
    tail: Math.abs(x.tailLift - q * s.tailArea * s.tailSlope * tailAngle) / weight,
  };
}
