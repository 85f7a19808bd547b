import { nonNegative, positive } from './domain';
import { lineDrag, type TurningLines } from './line-drag';
import { linesMass, linesPressDown } from './lines';
import { discArea } from './thrust-law';

/** A timed lap and the set-up that flew it; SI. */
export interface TimedLap {
  readonly lapTime: number;
  readonly mass: number;
  readonly gravity: number;
  /** To the CG, m. */
  readonly radius: number;
  /** Of the CG above the handle, m. */
  readonly height: number;
  /** Density in `lines` is that of the day. */
  readonly lines: TurningLines;
  readonly lineLinearMass: number;
  /** Profile drag C_D·A of the whole model, lines apart, m². */
  readonly dragArea: number;
  readonly wingArea: number;
  /** k in C_D = C_D0 + k C_L². */
  readonly inducedFactor: number;
  readonly propellerDiameter: number;
}

export interface LapPower {
  /** V, m/s. */
  readonly speed: number;
  /** Thrust that the lap needs, N. */
  readonly thrust: number;
  /** Thrust × V, W. */
  readonly usefulPower: number;
  /** Power that an ideal propeller of that diameter takes for it, W: what is held. */
  readonly idealPower: number;
}

/**
 * Power that explains a timed lap.
 *
 *   V = 2π R cos φ/t,  sin φ = h/R,  L = m g cos φ + m (V²/R) tan φ + F_down
 *   P V = [q C_D A + k L²/(q S)] V + F_line R_g V/R   (energy: drag of the model and of the lines)
 *   w = −V/2 + √(V²/4 + P/(2 ρ A)),  W_i = P (V + w)   (momentum theory of the propeller's disc)
 *
 * t lap time (s), R radius to the CG, h height above the handle (m), A disc area, w speed that the propeller adds at
 * the disc (m/s). Drag of side force and trim is left out (about 1 % of the whole). Derivation: energy; H. Glauert, The
 * Elements of Aerofoil and Airscrew Theory, for the disc.
 */
export function lapPower(lap: TimedLap): LapPower {
  const sine = lap.height / positive('radius', lap.radius);
  if (!(Math.abs(sine) < 1))
    throw new RangeError(`height is ${lap.height}; it must be less than the radius ${lap.radius}`);
  const cosine = Math.sqrt(1 - sine * sine);
  const speed = (2 * Math.PI * lap.radius * cosine) / positive('lap time', lap.lapTime);
  const { lines } = lap;
  const q = 0.5 * lines.density * speed * speed;
  const reach = lines.guideRadius - lines.handleReach;
  const hanging = linesMass(lines.count, lap.lineLinearMass, reach);
  const press = linesPressDown(
    hanging,
    lap.gravity,
    Math.asin(sine),
    lines.handleReach,
    lines.guideRadius,
    speed,
    lap.radius,
  );
  const turn = (lap.mass * speed * speed * sine) / (lap.radius * cosine);
  const lift = positive('mass', lap.mass) * lap.gravity * cosine + turn + press;
  const drag = q * lap.dragArea + (lap.inducedFactor * lift * lift) / (q * lap.wingArea);
  const thrust = drag + (lineDrag(lines, speed / lap.radius) * lines.guideRadius) / lap.radius;
  const induced = inflow(thrust, speed, lines.density, lap.propellerDiameter);
  return { speed, thrust, usefulPower: thrust * speed, idealPower: thrust * (speed + induced) };
}

/** Share of rpm × pitch that models fly at: common practice, no source. */
export const PITCH_SPEED_SHARE = 0.85;

/** Ω = 2π V/(0.85 p): shaft speed (rad/s) of a propeller of pitch p (m) at the airspeed V (m/s), where nobody read it. Common practice, no source. */
export const shaftSpeedOfLap = (speed: number, pitch: number): number =>
  (2 * Math.PI * nonNegative('airspeed', speed)) / (PITCH_SPEED_SHARE * positive('pitch', pitch));

const inflow = (thrust: number, speed: number, density: number, diameter: number): number =>
  -speed / 2 + Math.sqrt((speed * speed) / 4 + thrust / (2 * density * discArea(diameter)));

/**
 * Thrust (N) of an ideal propeller that takes the power W_i (W) at the airspeed V (m/s).
 *
 *   P = W_i/x,  x = V + w,  x² (x − V) = W_i/(2 ρ A)
 *
 * Smooth and falling in V for V ≥ 0; at V = 0 the static thrust (2 ρ A W_i²)^⅓, at high speed W_i/V. It gives back the
 * thrust of the lap from which W_i came. Real blades pull less at rest, since they are stalled there. ρ (kg/m³), D
 * diameter (m). Newton from x = V + (W_i/2ρA)^⅓, which lies above the root of a function hollow from below. Derivation:
 * momentum theory as in `lapPower`, solved for the thrust.
 */
export function thrustAtPower(power: number, airspeed: number, density: number, diameter: number): number {
  const V = nonNegative('airspeed', airspeed);
  if (nonNegative('power', power) === 0) return 0;
  const c = power / (2 * positive('air density', density) * discArea(diameter));
  let x = V + Math.cbrt(c);
  for (let n = 0; n < 60; n++) {
    const change = (x * x * (x - V) - c) / (x * (3 * x - 2 * V));
    x -= change;
    if (Math.abs(change) <= 1e-15 * x) break;
  }
  return power / x;
}

/** What holds the thrust of a timed lap down at less speed. */
export interface SlowThrust {
  /** Of the timed lap, m/s. */
  readonly lapSpeed: number;
  /** Thrust at rest that goes with the torque, N. */
  readonly still: number;
}

/**
 * P = min(P_i(V), max(P_0, P_i(V_l))) for V < V_l, else P_i(V): thrust (N) at the airspeed V (m/s) of a propeller that takes the power W_i (W). P_i as
 * `thrustAtPower`, V_l speed of the timed lap. An ideal propeller would pull ever more as it slows; blades stall and the engine is held back, so that
 * thrust stays near what the torque gives at rest. Never less than in the timed lap. Derivation: both limits; the corner between is a simplification.
 */
export function thrustOfLap(
  power: number,
  airspeed: number,
  density: number,
  diameter: number,
  { lapSpeed, still }: SlowThrust,
): number {
  const ideal = thrustAtPower(power, airspeed, density, diameter);
  if (airspeed >= lapSpeed) return ideal;
  return Math.min(ideal, Math.max(still, thrustAtPower(power, lapSpeed, density, diameter)));
}
