import { nonNegative, positive } from './domain';

/**
 * Reynolds number at which the boundary layer of a model turns turbulent: grain, hinge gaps and propeller wash trip it well before
 * the 5e5 of a smooth plate in calm air (common practice, no source).
 */
export const MODEL_TRANSITION = 2e5;

/** Factors of the laminar and the turbulent law, and the power of Re in the second. Sources: as their functions say. */
export const LAMINAR_FACTOR = 1.328;
export const TURBULENT_FACTOR = 0.074;
export const TURBULENT_POWER = 0.2;
/** F = 1 + 2 x + 60 x⁴ of surfaces and F = 1 + 1.5 x^1.5 + 7 x³ of bodies, x thickness over length. Sources: as their functions say. */
export const SURFACE_FORM = [2, 60] as const;
export const BODY_FORM = [1.5, 7] as const;

/** C_f = 1.328/√Re: laminar flat plate, one side. Source: H. Blasius; as J. D. Anderson, Fundamentals of Aerodynamics, ch. 4. */
export function laminarFriction(reynolds: number): number {
  return LAMINAR_FACTOR / Math.sqrt(positive('Reynolds number', reynolds));
}

/** C_f = 0.074/Re^0.2: turbulent flat plate from the leading edge, one side; 5e5 to 1e7. Source: as above. */
export function turbulentFriction(reynolds: number): number {
  return TURBULENT_FACTOR / positive('Reynolds number', reynolds) ** TURBULENT_POWER;
}

/**
 * C_f = C_f,turb(Re) − (Re_1/Re) [C_f,turb(Re_1) − C_f,lam(Re_1)]: flat plate that is laminar up to the transition Reynolds number Re_1
 * and turbulent behind it, one side; laminar law where Re ≤ Re_1. Continuous at Re_1.
 * Source: J. D. Anderson, Fundamentals of Aerodynamics, ch. 4 (transition by difference of the two laws).
 */
export function plateFriction(reynolds: number, transition: number): number {
  if (reynolds <= transition) return laminarFriction(reynolds);
  const shift = turbulentFriction(transition) - laminarFriction(transition);
  return turbulentFriction(reynolds) - (transition / reynolds) * shift;
}

/**
 * F = 1 + 2 (t/c) + 60 (t/c)⁴: drag of a surface of thickness ratio t/c over the friction of its wetted area.
 * Source: S. F. Hoerner, Fluid-Dynamic Drag, ch. VI (from memory).
 */
export function surfaceFormFactor(thicknessRatio: number): number {
  const t = nonNegative('thickness over chord', thicknessRatio);
  const [first, fourth] = SURFACE_FORM;
  return 1 + first * t + fourth * t ** 4;
}

/**
 * F = 1 + 1.5 (d/l)^1.5 + 7 (d/l)³: drag of a slim body of length l and mean diameter d over the friction of its wetted area.
 * Source: S. F. Hoerner, Fluid-Dynamic Drag, ch. VI (from memory).
 */
export function bodyFormFactor(diameter: number, length: number): number {
  const ratio = nonNegative('diameter', diameter) / positive('length', length);
  const [slim, blunt] = BODY_FORM;
  return 1 + slim * ratio ** 1.5 + blunt * ratio ** 3;
}

/**
 * C_D A = C_f F S_wet: drag area (m²) by friction of a wetted area S_wet (m²), length l (m) along the flow, speed V (m/s),
 * kinematic viscosity ν (m²/s), Re = V l/ν, form factor F. Nothing for no area. Derivation: definition of C_f.
 */
export function frictionDragArea(
  wettedArea: number,
  length: number,
  formFactor: number,
  speed: number,
  kinematicViscosity: number,
): number {
  if (nonNegative('wetted area', wettedArea) === 0) return 0;
  const reynolds =
    (positive('speed', speed) * positive('length', length)) / positive('kinematic viscosity', kinematicViscosity);
  return plateFriction(reynolds, MODEL_TRANSITION) * formFactor * wettedArea;
}

/** Drag coefficients on frontal area of exposed items, with their basis. */
export const ITEM_DRAG = {
  /** Unfaired wheel, diameter × width. Source: M. Sadraey, Aircraft Performance Analysis, read second-hand. */
  wheel: 0.3,
  /** Round wire side-on, length × diameter, Re 1e4 to 2e5 (model wire about 5e3). Source: as above; also S. F. Hoerner. */
  wire: 1.2,
  /** Irregular fitting. Source: D. P. Raymer, component drag table, 1.0 to 1.4 (from memory). */
  cylinderHead: 1.0,
  /** Blunt round body end-on behind the cylinder (common practice, no source). */
  silencer: 0.8,
  /** Box with its front in the wake of the engine (common practice, no source). */
  tank: 0.5,
} as const;
