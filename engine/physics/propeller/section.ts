/**
 * The one section that all propellers have, at the small Reynolds numbers of models. Its numbers were fitted once, to all
 * eleven propellers of 9 and 10 in with known chords together (J. B. Brandt and others, UIUC Propeller Database, volumes 1
 * and 2, at rest over the rpm measured and up to a little beyond their best efficiency); none belongs to a single propeller.
 * Angles in rad from the marked pitch, which makers measure on the flat underside.
 */
export const BLADE_SECTION = {
  /** Re at which the numbers hold. */
  reynolds: 5e4,
  /** a_0, 1/rad. */
  slope: 5.66,
  /** α_L0 and its change for ten times the Reynolds number; the camber works less where the flow is slow. */
  zeroLiftAngle: -0.0706,
  zeroLiftTrend: -0.0808,
  /** Decades of Re between which both change; held beyond. */
  trendFrom: -0.7,
  trendTo: 0.3,
  /** Angle from zero lift at which half of the upper side has separated, its change for ten times Re, its breadth, the same upside down. */
  stall: 0.3,
  stallTrend: 0.067,
  stallBreadth: 0.049,
  stallInverted: 0.12,
  /** How much later a blade stalls for each radius share that it lies inboard of half radius: rotation holds the flow. */
  rotationDelay: 0.6,
  /** c_d without lift, and the power of Re by which it falls, up to four times Re and beyond it. */
  drag: 0.0401,
  dragPower: 0.6,
  dragPowerAbove: 0.2,
  dragBend: 0.6,
  /** Growth with c_l². */
  liftDrag: 0.005,
  /** Drag of the separated flow over sin² of the angle from zero lift. */
  plateDrag: 1.8,
} as const;

/** Greatest Mach number in the rule for lift at speed, and the one from which shock waves add drag. */
const LIFT_MACH = 0.75;
const WAVE_MACH = 0.7;

/** A section at its Reynolds and Mach number: what no longer depends on the angle. */
export interface SectionFlow {
  /** α_L0, rad. */
  zeroLiftAngle: number;
  /** a_0/√(1 − M²), 1/rad. */
  slope: number;
  /** Angle from zero lift at which half of the upper side has separated, rad. */
  stall: number;
  /** c_d without lift. */
  drag: number;
}

export const newSectionFlow = (): SectionFlow => ({ zeroLiftAngle: 0, slope: 0, stall: 0, drag: 0 });

/**
 * What Reynolds and Mach number make of the section at the radius share r/R.
 *
 *   α_L0 = α_1 + α_2 lg(Re/5·10⁴),  c_d0 = c_1 (Re/5·10⁴)^−0.6, beyond 2·10⁵ with the power −0.2
 *   a = a_0/√(1 − M²) up to M = 0.75,  c_d0 grows by 20 (M − 0.7)⁴ beyond M = 0.7
 *
 * Sources: √(1 − M²) from L. Prandtl and H. Glauert, the fourth power from C. N. H. Lock (both from memory). Numbers: see
 * `BLADE_SECTION`.
 */
export function sectionInFlow(reynolds: number, mach: number, radiusShare: number, out: SectionFlow): void {
  const s = BLADE_SECTION;
  const decades = Math.log10(Math.max(reynolds, 1) / s.reynolds);
  const trend = Math.min(s.trendTo, Math.max(s.trendFrom, decades));
  const slow = Math.min(s.dragBend, Math.max(s.trendFrom, decades));
  const fast = Math.max(0, decades - s.dragBend);
  const wave = mach > WAVE_MACH ? 20 * (mach - WAVE_MACH) ** 4 : 0;
  out.zeroLiftAngle = s.zeroLiftAngle + s.zeroLiftTrend * trend;
  out.slope = s.slope / Math.sqrt(1 - Math.min(mach, LIFT_MACH) ** 2);
  out.stall = s.stall + s.stallTrend * trend + s.rotationDelay * Math.max(0, 0.5 - radiusShare);
  out.drag = s.drag * 10 ** (-s.dragPower * slow - s.dragPowerAbove * fast) + wave;
}

/** Places in what `sectionAtAngle` writes. */
export const LIFT = 0;
export const DRAG = 1;

/**
 * Lift and drag coefficients of the section at the angle of attack α (rad) to out[LIFT] and out[DRAG].
 *
 *   α' = α − α_L0,  f = 1/(1 + e^((|α'| − α_s)/s)),  K = ((1 + √f)/2)²
 *   c_l = a K sin α' cos α',  c_d = c_d0 + k c_l² + k_p (1 − f) sin² α'
 *
 * f share of the chord with attached flow, α_s smaller upside down. Any α to ±90°. Source: K from G. Kirchhoff's free
 * streamlines as in J. G. Leishman, Principles of Helicopter Aerodynamics (from memory). Numbers: see `BLADE_SECTION`.
 */
export function sectionAtAngle(flow: SectionFlow, angle: number, out: Float64Array): void {
  const s = BLADE_SECTION;
  const fromZero = angle - flow.zeroLiftAngle;
  const sine = Math.sin(fromZero);
  const stall = fromZero > 0 ? flow.stall : s.stallInverted;
  const attached = 1 / (1 + Math.exp((Math.abs(fromZero) - stall) / s.stallBreadth));
  const root = (1 + Math.sqrt(attached)) / 2;
  const lift = flow.slope * root * root * sine * Math.cos(fromZero);
  out[LIFT] = lift;
  out[DRAG] = flow.drag + s.liftDrag * lift * lift + s.plateDrag * (1 - attached) * sine * sine;
}
