import { findRoot, type Root } from '../../numerics/index';
import { DRAG, LIFT, newSectionFlow, type SectionFlow, sectionAtAngle } from './section';

/** One ring of the disc that the blades sweep, and the flow that it meets. Lengths over R, speeds over the tip's speed of turning. */
export interface Annulus {
  /** r/R. */
  radius: number;
  /** σ = B c/(2π r). */
  solidity: number;
  /** B (1 − r/R)/(2 r/R), of the tip loss. */
  tip: number;
  /** β, rad. */
  angle: number;
  /** V/(Ω R). */
  advance: number;
  /** Its section, at the Reynolds and Mach number of the undisturbed flow. */
  readonly section: SectionFlow;
}

export const newAnnulus = (): Annulus => ({
  radius: 0,
  solidity: 0,
  tip: 0,
  angle: 0,
  advance: 0,
  section: newSectionFlow(),
});

/** What the ring does: read `status` first. */
export interface AnnulusFlow {
  status: Root['status'];
  iterations: number;
  /** Of the balance of momentum, over σ. */
  residual: number;
  /** φ, angle of the flow to the plane of rotation, rad. */
  inflow: number;
  /** W/(Ω R). */
  speed: number;
  lift: number;
  drag: number;
}

export const newAnnulusFlow = (): AnnulusFlow => ({
  status: 'settled',
  iterations: 0,
  residual: 0,
  inflow: 0,
  speed: 0,
  lift: 0,
  drag: 0,
});

const section = new Float64Array(2);
/** Width of the bracket at which the search for the angle ends, rad. */
const OPTIONS = { tolerance: 1e-5 };
/** An imbalance below it is none. */
const ROUNDING = 1e-12;

/** σ c_l cos(φ − φ_0) − 4 F sin φ sin(φ − φ_0); leaves c_l and c_d in `section`. */
function unbalance(ring: Annulus, undisturbed: number, inflow: number): number {
  const turned = inflow - undisturbed;
  sectionAtAngle(ring.section, ring.angle - inflow, section);
  const sine = Math.sin(inflow);
  const loss = (2 / Math.PI) * Math.acos(Math.exp(-ring.tip / Math.max(Math.abs(sine), 1e-12)));
  return ring.solidity * section[LIFT]! * Math.cos(turned) - 4 * loss * sine * Math.sin(turned);
}

/**
 * Flow through one ring of a propeller: the lift of its blades balances the momentum that they give to the air.
 *
 *   φ_0 = atan(V/(Ω r)),  W = U cos(φ − φ_0),  U = √(V² + (Ω r)²)
 *   σ c_l cos(φ − φ_0) = 4 F sin φ sin(φ − φ_0)
 *   F = (2/π) acos e^(−B (R − r)/(2 r |sin φ|))
 *
 * φ angle of the flow to the plane of rotation, W its speed, σ = B c/(2π r) solidity, B blades, F Prandtl's tip loss. The
 * speed that the blades add stands at right angles on W (lift alone makes it), so one angle tells all of it; nothing is
 * singular at rest. Holds from rest to windmilling without reversed flow through the disc. Bracketed between φ_0 and the
 * angle β − α_L0 of no lift.
 * Source: H. Glauert, Airplane Propellers, in W. F. Durand, Aerodynamic Theory IV; L. Prandtl's addition to A. Betz (1919).
 */
export function solveAnnulus(ring: Annulus, out: AnnulusFlow): void {
  const undisturbed = Math.atan2(ring.advance, ring.radius);
  const speed = Math.hypot(ring.advance, ring.radius);
  const f = (inflow: number): number => unbalance(ring, undisturbed, inflow);
  // Blades lift while the flow meets them below the angle at which they don't: the root lies between that and φ_0.
  const noLift = ring.angle - ring.section.zeroLiftAngle;
  const low = noLift > undisturbed ? undisturbed : Math.max(0, noLift);
  const high = noLift > undisturbed ? Math.min(noLift, undisturbed + Math.PI / 2) : undisturbed;
  const root = findRoot(f, low, high, OPTIONS);
  // Where flow and blade agree already both ends are the root, to rounding.
  out.status = Math.abs(root.residual) < ROUNDING ? 'settled' : root.status;
  out.iterations = root.iterations;
  out.residual = f(root.value) / ring.solidity;
  out.inflow = root.value;
  out.speed = speed * Math.cos(root.value - undisturbed);
  out.lift = section[LIFT]!;
  out.drag = section[DRAG]!;
}
