import { positive } from './domain';
import { nearPower } from './speed-law';

/** V = 2π √(R² − h²)/t: speed (m/s) of a lap of the time t (s) at the radius R, h above the handle (m). Derivation: circumference. */
export const speedOfLap = (radius: number, height: number, lapTime: number): number =>
  (2 * Math.PI * Math.sqrt(radius * radius - height * height)) / positive('lap time', lapTime);

/** What the drag of a wing hangs on; SI. */
export interface DraggingWing {
  readonly area: number;
  /** c_d0 at the section speed. */
  readonly profileDrag: number;
  /** Airspeed of the Reynolds number for which the section is known, m/s. */
  readonly sectionSpeed: number;
  /** Power of the airspeed with which c_d0 goes. */
  readonly dragPower: number;
  /** ∂c_d/∂C_L of a cambered section. */
  readonly dragSlope: number;
}

/**
 * A = S [c_d0 (V/V_s)^n + c_dL C_L] + A_b,  C_L S = 2 m g/(ρ V²): drag area (m²) of a model in level flight at V (m/s), lines and drag due to lift
 * apart. A_b fuselage and exposed items (m²), m mass (kg), ρ density (kg/m³); what of the lift is not weight is left out. The power by `nearPower`.
 * Derivation: definition of the drag area.
 */
export function levelDragArea(
  wing: DraggingWing,
  body: number,
  speed: number,
  weight: number,
  density: number,
): number {
  const profile = wing.profileDrag * nearPower(speed, wing.sectionSpeed, wing.dragPower);
  const liftArea = (2 * weight) / (positive('air density', density) * speed * speed);
  return wing.area * profile + wing.dragSlope * liftArea + body;
}
