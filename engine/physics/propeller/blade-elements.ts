import { gaussLegendre } from '../../numerics/index';
import { nonNegative, positive } from '../domain';
import { type Annulus, newAnnulus, newAnnulusFlow, solveAnnulus } from './annulus';
import { alongBlade, type Propeller } from './blade';
import { sectionInFlow } from './section';

/** The air that a propeller turns in; SI. */
export interface PropellerAir {
  readonly kinematicViscosity: number;
  readonly soundSpeed: number;
}

/** Coefficients at one state of flight, and what the solution of its rings says. */
export interface PropellerState {
  /** C_T = P/(ρ n² D⁴). */
  thrust: number;
  /** C_P = W/(ρ n³ D⁵). */
  power: number;
  /** All rings settled. */
  settled: boolean;
  /** Greatest of all rings. */
  iterations: number;
  residual: number;
}

export const newPropellerState = (): PropellerState => ({
  thrust: 0,
  power: 0,
  settled: true,
  iterations: 0,
  residual: 0,
});

/** Rings over the blade: ten give C_T and C_P to some 0.3 % of forty. */
const RINGS = 10;

/** A propeller with everything worked out that doesn't depend on its state. */
export interface PreparedPropeller {
  readonly diameter: number;
  readonly blades: number;
  readonly radius: Float64Array;
  readonly weight: Float64Array;
  readonly chord: Float64Array;
  readonly angle: Float64Array;
}

/** Chords and angles where the rings stand: by Gauss and Legendre from the first station of the blade to its tip. */
export function preparePropeller(propeller: Propeller, rings = RINGS): PreparedPropeller {
  const { nodes, weights } = gaussLegendre(rings);
  const root = propeller.radiusShare[0]!;
  const half = (1 - root) / 2;
  const radius = Float64Array.from(nodes, (x) => root + half * (x + 1));
  return {
    diameter: positive('propeller diameter', propeller.diameter),
    blades: propeller.blades,
    radius,
    weight: Float64Array.from(weights, (w) => half * w),
    chord: radius.map((x) => alongBlade(propeller.radiusShare, propeller.chordShare, x)),
    angle: radius.map((x) => alongBlade(propeller.radiusShare, propeller.angle, x)),
  };
}

const ring = newAnnulus();
const flow = newAnnulusFlow();

/** Fills `ring` with the k-th ring of the propeller at the advance ratio J and n turns a second. */
export function setAnnulus(
  p: PreparedPropeller,
  k: number,
  J: number,
  n: number,
  air: PropellerAir,
  to: Annulus,
): void {
  const x = p.radius[k]!;
  const tipSpeed = Math.PI * n * p.diameter;
  to.radius = x;
  to.solidity = (p.blades * p.chord[k]!) / (2 * Math.PI * x);
  to.tip = (p.blades * (1 - x)) / (2 * x);
  to.angle = p.angle[k]!;
  to.advance = J / Math.PI;
  const speed = tipSpeed * Math.hypot(x, to.advance);
  const reynolds = (speed * p.chord[k]! * p.diameter) / (2 * air.kinematicViscosity);
  sectionInFlow(reynolds, speed / air.soundSpeed, x, to.section);
}

/**
 * C_T and C_P of a propeller at the advance ratio J = V/(n D) and n turns a second, by blade elements and momentum.
 *
 *   C_T = (π³/4) ∫ σ w² x (c_l cos φ − c_d sin φ) dx
 *   C_P = (π⁴/4) ∫ σ w² x² (c_l sin φ + c_d cos φ) dx
 *
 * x = r/R, w = W/(Ω R), the flow of each ring by `solveAnnulus`. J from rest to windmilling. Source: H. Glauert, Airplane
 * Propellers, in W. F. Durand, Aerodynamic Theory IV.
 */
export function propellerState(
  p: PreparedPropeller,
  advanceRatio: number,
  turns: number,
  air: PropellerAir,
  out: PropellerState,
): void {
  nonNegative('advance ratio', advanceRatio);
  positive('shaft speed', turns);
  let [thrust, power] = [0, 0];
  out.settled = true;
  out.iterations = 0;
  out.residual = 0;
  for (let k = 0; k < p.radius.length; k++) {
    setAnnulus(p, k, advanceRatio, turns, air, ring);
    solveAnnulus(ring, flow);
    const [sine, cosine] = [Math.sin(flow.inflow), Math.cos(flow.inflow)];
    const load = p.weight[k]! * ring.solidity * flow.speed * flow.speed * ring.radius;
    thrust += load * (flow.lift * cosine - flow.drag * sine);
    power += load * ring.radius * (flow.lift * sine + flow.drag * cosine);
    out.settled &&= flow.status === 'settled';
    out.iterations = Math.max(out.iterations, flow.iterations);
    out.residual = Math.max(out.residual, Math.abs(flow.residual));
  }
  out.thrust = (Math.PI ** 3 / 4) * thrust;
  out.power = (Math.PI ** 4 / 4) * power;
}

const still = newPropellerState();

/**
 * Q = C_P ρ n² D⁵/2π: torque (N·m) that a propeller of diameter D (m) asks for at rest at the shaft speed Ω = 2π n (rad/s), in air of density ρ
 * (kg/m³); C_P at J = 0 by blade elements. By definition of C_P.
 */
export function stillTorque(p: PreparedPropeller, shaftSpeed: number, density: number, air: PropellerAir): number {
  const n = positive('shaft speed', shaftSpeed) / (2 * Math.PI);
  propellerState(p, 0, n, air, still);
  return (still.power * positive('air density', density) * n * n * p.diameter ** 5) / (2 * Math.PI);
}
