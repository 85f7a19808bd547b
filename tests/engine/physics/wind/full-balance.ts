/**
 * A lap in wind from mechanics alone, to hold the product against: a rigid body with six equations (three of force, three of moment about the CG),
 * in the axes of the world with plain vectors. Wing, body and lines are strips, each in the air that it meets itself. It shares no code with the
 * engine. Unknown at every azimuth: acceleration along the path, pull, yaw, roll, pitch and the lift of the tail; the attitude follows without delay, the
 * radius and the height are held.
 */

export type Vector = readonly [number, number, number];
const add = (...all: readonly Vector[]): Vector =>
  all.reduce<Vector>((a, b) => [a[0] + b[0], a[1] + b[1], a[2] + b[2]], [0, 0, 0]);
const times = (k: number, a: Vector): Vector => [k * a[0], k * a[1], k * a[2]];
const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const size = (a: Vector): number => Math.sqrt(dot(a, a));
const unit = (a: Vector): Vector => times(1 / size(a), a);
/** Turns a pair of axes from the first toward the second. */
const turned = (a: Vector, b: Vector, angle: number): readonly [Vector, Vector] => [
  add(times(Math.cos(angle), a), times(Math.sin(angle), b)),
  add(times(-Math.sin(angle), a), times(Math.cos(angle), b)),
];

/** An invented model and its lines, SI; stations aft of the datum, outboard of the centreline, above the reference line. */
export interface Model {
  readonly mass: number;
  readonly cg: Vector;
  /** About the axes along nose, span and up. */
  readonly inertia: Vector;
  readonly density: number;
  /** Height of the CG above the handle. */
  readonly height: number;
  readonly lines: {
    readonly count: number;
    readonly diameter: number;
    readonly linearMass: number;
    readonly drag: number;
    readonly handleReach: number;
    readonly guideRadius: number;
    readonly guide: Vector;
  };
  readonly wing: {
    readonly x: number;
    readonly inboard: number;
    readonly outboard: number;
    readonly rootChord: number;
    readonly tipChord: number;
    /** Lift slope of every strip, drag coefficient, k of the whole wing. */
    readonly slope: number;
    readonly drag: number;
    readonly induced: number;
  };
  readonly tail: { readonly x: number; readonly area: number; readonly induced: number; readonly downwash: number };
  readonly fin: { readonly x: number; readonly z: number; readonly area: number; readonly slope: number };
  /** Of even depth. */
  readonly side: {
    readonly from: number;
    readonly to: number;
    readonly area: number;
    readonly slope: number;
    readonly crossFlow: number;
  };
  readonly dragArea: number;
  readonly engine: {
    readonly x: number;
    readonly offset: number;
    readonly static: number;
    readonly loss: number;
    readonly torque: number;
    readonly rotor: number;
  };
}

const STRIPS = 24;
const GRAVITY = 9.80665;
const middles = (from: number, to: number): number[] =>
  Array.from({ length: STRIPS }, (_, k) => from + ((k + 0.5) * (to - from)) / STRIPS);
const chordAt = ({ wing: w }: Model, y: number): number =>
  w.rootChord + ((w.tipChord - w.rootChord) * Math.abs(y)) / (y > 0 ? w.outboard : w.inboard);

/** Area, first and second moment across the span of the wing's strips. */
export function spanMoments(model: Model): { area: number; first: number; second: number } {
  const { inboard, outboard } = model.wing;
  const step = (inboard + outboard) / STRIPS;
  const sum = (power: number): number =>
    middles(-inboard, outboard).reduce((total, y) => total + step * chordAt(model, y) * y ** power, 0);
  return { area: sum(0), first: sum(1), second: sum(2) };
}

/** Square of the sine less that at 10°, its corner rounded by a parabola from 6.7° to 15°: the guess that the product makes as well. */
function crossFlowOf(sine: number): number {
  const [ten, end] = [Math.sin(Math.PI / 18), Math.sin(Math.PI / 12)];
  const begin = (ten * ten) / end;
  const s = Math.abs(sine);
  const share = s <= begin ? 0 : s < end ? (end * (s - begin) ** 2) / (end - begin) : s * s - ten * ten;
  return Math.sign(sine) * share;
}

/** acceleration, pull along the line, β, δ, θ, lift of the tail. */
type Unknown = [number, number, number, number, number, number];

interface Answer {
  readonly left: Unknown;
  /** Of the line on the model. */
  readonly pull: number;
}

function balanceAt(m: Model, wind: number, azimuth: number, V: number, x: Unknown): Answer {
  const [acceleration, alongLine, beta, delta, theta, tailLift] = x;
  const { lines, wing, tail, fin, side, engine } = m;
  const R = lines.guideRadius + m.cg[1] - lines.guide[1];
  const phi = Math.asin(m.height / R);
  const [ca, sa, cp, sp] = [Math.cos(azimuth), Math.sin(azimuth), Math.cos(phi), Math.sin(phi)];
  const t: Vector = [-sa, ca, 0];
  const o: Vector = [cp * ca, cp * sa, sp];
  const u: Vector = [-sp * ca, -sp * sa, cp];
  const air: Vector = [wind, 0, 0];
  const place = times(R, o);
  const spin: Vector = [0, 0, V / (R * cp)];
  const spinUp: Vector = [0, 0, acceleration / (R * cp)];

  const [out1, up1] = turned(o, u, -delta);
  const [heading, span] = turned(t, out1, beta);
  const [nose, up] = turned(heading, up1, theta);
  const at = (aft: number, outboard: number, above: number): Vector =>
    add(times(m.cg[0] - aft, nose), times(outboard - m.cg[1], span), times(above - m.cg[2], up));
  const meets = (p: Vector): Vector => add(air, times(-1, add(times(V, t), cross(spin, p))));

  let force: Vector = times(-m.mass * GRAVITY, [0, 0, 1]);
  let moment: Vector = [0, 0, 0];
  const load = (f: Vector, p: Vector): void => {
    force = add(force, f);
    moment = add(moment, cross(p, f));
  };
  const half = 0.5 * m.density;

  // Wing: strips that lift square to the span and to the air across it.
  let wingLift = 0;
  const wide = (wing.inboard + wing.outboard) / STRIPS;
  for (const y of middles(-wing.inboard, wing.outboard)) {
    const p = at(wing.x, y, m.cg[2]);
    const w = meets(p);
    const area = wide * chordAt(m, y);
    const across = add(w, times(-dot(w, span), span));
    const angle = Math.atan2(dot(across, up), -dot(across, nose));
    const lift = half * dot(across, across) * area * wing.slope * angle;
    wingLift += lift;
    load(times(lift, unit(cross(across, span))), p);
    load(times(half * size(w) * area * wing.drag, w), p);
  }
  const moments = spanMoments(m);
  const middle = at(wing.x, moments.first / moments.area, m.cg[2]);
  const atMiddle = meets(middle);
  const q = half * dot(atMiddle, atMiddle);
  const flow = unit(atMiddle);
  load(
    times((wing.induced * wingLift * wingLift) / (q * moments.area), flow),
    at(m.cg[0], moments.first / moments.area, m.cg[2]),
  );

  // Tail.
  const tailPlace = at(tail.x, 0, m.cg[2]);
  const tailAir = meets(tailPlace);
  const tailAcross = add(tailAir, times(-dot(tailAir, span), span));
  load(times(tailLift, unit(cross(tailAcross, span))), tailPlace);
  const washed = (tail.downwash * wingLift) / (q * moments.area * wing.slope);
  load(
    times((tail.induced * tailLift * tailLift) / (q * tail.area) + tailLift * washed, flow),
    at(m.cg[0], 0, m.cg[2]),
  );

  // Body and fin.
  load(times(q * m.dragArea, flow), at(m.cg[0], 0, m.cg[2]));
  const deep = side.area / STRIPS;
  for (const station of middles(side.from, side.to)) {
    const p = at(station, 0, m.cg[2]);
    const w = meets(p);
    const slip = Math.atan2(dot(w, span), -dot(w, nose));
    const whole = side.slope * slip + side.crossFlow * crossFlowOf(Math.sin(slip));
    load(times(half * dot(w, w) * deep * whole, span), p);
  }
  const finPlace = at(fin.x, 0, fin.z);
  const finAir = meets(finPlace);
  const finSlip = Math.atan2(dot(finAir, span), -dot(finAir, nose));
  load(times(half * dot(finAir, finAir) * fin.area * fin.slope * finSlip, span), finPlace);

  // Propeller, by the inflow along its shaft.
  const [shaft] = turned(nose, span, engine.offset);
  const enginePlace = at(engine.x, 0, m.cg[2]);
  const inflow = -dot(meets([0, 0, 0]), shaft);
  load(times(engine.static - engine.loss * inflow, shaft), enginePlace);
  moment = add(moment, times(-engine.torque, shaft));

  // Lines: straight from the pilot's axis to the guide; what presses on them across reaches the guide by moments about the pilot.
  const guide = at(lines.guide[0], lines.guide[1], lines.guide[2]);
  const end = add(place, guide);
  const direction = unit(end);
  const reach = size(end);
  let across: Vector = [0, 0, 0];
  const step = (lines.guideRadius - lines.handleReach) / STRIPS;
  for (const r of middles(lines.handleReach, lines.guideRadius)) {
    const p = times(r, direction);
    const w = add(air, times(-1, cross(spin, p)));
    const aside = add(w, times(-dot(w, direction), direction));
    const drag = times(lines.count * half * lines.drag * lines.diameter * size(aside) * step, aside);
    const mass = lines.count * lines.linearMass * step;
    const inertial = times(-mass, add(cross(spin, cross(spin, p)), cross(spinUp, p)));
    const all = add(drag, inertial, times(-mass * GRAVITY, [0, 0, 1]));
    across = add(across, times(r / reach, add(all, times(-dot(all, direction), direction))));
  }
  const onModel = add(times(-alongLine, direction), across);
  load(onModel, guide);

  // Newton and Euler.
  const a = add(times(acceleration, t), cross(spin, cross(spin, place)));
  const leftForce = add(force, times(-m.mass, a));
  const axes = [nose, span, up] as const;
  const turnOf = (w: Vector): Vector => add(...axes.map((axis, k) => times(m.inertia[k]! * dot(w, axis), axis)));
  const momentum = add(turnOf(spin), times(engine.rotor, shaft));
  const leftMoment = add(moment, times(-1, turnOf(spinUp)), times(-1, cross(spin, momentum)));
  return {
    left: [
      dot(leftForce, t),
      dot(leftForce, o),
      dot(leftForce, u),
      dot(leftMoment, t),
      dot(leftMoment, out1),
      dot(leftMoment, up1),
    ],
    pull: size(onModel),
  };
}

/** Newton's method with slopes by differences and Gauss elimination. */
function settle(m: Model, wind: number, azimuth: number, V: number, x: Unknown): number {
  for (let round = 0; round < 20; round++) {
    const here = balanceAt(m, wind, azimuth, V, x);
    if (Math.max(...here.left.map(Math.abs)) < 1e-9) return here.pull;
    const columns = x.map((value, k) => {
      const there = balanceAt(m, wind, azimuth, V, x.with(k, value + 1e-6) as Unknown).left;
      return there.map((left, row) => (left - here.left[row]!) / 1e-6);
    });
    const a = here.left.map((left, row) => [...columns.map((column) => column[row]!), -left]);
    for (let c = 0; c < 6; c++) {
      let best = c;
      for (let row = c + 1; row < 6; row++) if (Math.abs(a[row]![c]!) > Math.abs(a[best]![c]!)) best = row;
      [a[c], a[best]] = [a[best]!, a[c]!];
      for (let row = 0; row < 6; row++) {
        if (row === c) continue;
        const f = a[row]![c]! / a[c]![c]!;
        for (let k = c; k < 7; k++) a[row]![k]! -= f * a[c]![k]!;
      }
    }
    for (let k = 0; k < 6; k++) x[k]! += Math.max(-2, Math.min(2, a[k]![6]! / a[k]![k]!));
  }
  return Number.NaN;
}

export interface FullLap {
  readonly azimuth: readonly number[];
  readonly speed: readonly number[];
  readonly pull: readonly number[];
  readonly time: number;
}

/** Flies lap after lap (Runge–Kutta of fourth order) until one comes back to its own speed. */
export function flyFullLap(m: Model, wind: number, places: number, start: number): FullLap {
  const R = m.lines.guideRadius + m.cg[1] - m.lines.guide[1];
  const level = Math.sqrt(R * R - m.height * m.height);
  const x: Unknown = [0, (m.mass * start * start) / R, 0, 0, 0.03, 0];
  const step = (2 * Math.PI) / places;
  const slope = (azimuth: number, V: number): number => {
    settle(m, wind, azimuth, V, x);
    return (x[0] * level) / V;
  };
  let V = start;
  for (let lap = 0; lap < 12; lap++) {
    const begin = V;
    const azimuths: number[] = [];
    const speeds: number[] = [];
    const pulls: number[] = [];
    let time = 0;
    for (let k = 0; k < places; k++) {
      const azimuth = k * step;
      azimuths.push(azimuth);
      speeds.push(V);
      pulls.push(settle(m, wind, azimuth, V, x));
      time += (step * level) / V;
      const k1 = (x[0] * level) / V;
      const k2 = slope(azimuth + step / 2, V + (step / 2) * k1);
      const k3 = slope(azimuth + step / 2, V + (step / 2) * k2);
      const k4 = slope(azimuth + step, V + step * k3);
      V += (step / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    if (!(Math.abs(V - begin) > 1e-5)) return { azimuth: azimuths, speed: speeds, pull: pulls, time };
  }
  return { azimuth: [], speed: [], pull: [Number.NaN], time: Number.NaN };
}
