import { describe, expect, it } from 'vitest';
import { dot, fuelSurface, gravityInFlight, type Place, prism, solidOf, tankShape } from '../../engine/physics/index';
import { jsonOf } from './aero-rows';
import { usedFlightRows } from './flight-rows';

/*
 * Y. A. Cengel and J. M. Cimbala, Fluid Mechanics, example 3-12: a tank that gathers speed. F. M. White, Fluid Mechanics, ch. 2:
 * a mug likewise (from memory). The load at 25 m/s on 18 m is computed, not published.
 */
const FILE = 'fluids_free_surface.json';
const file = jsonOf(FILE);
const example = (id: string) => file.examples.find((each: { id: string }) => each.id === id);
/** Height of the surface over its middle at the distance `at` along x, from the level of a body filled to `share`. */
function rise(body: ReturnType<typeof prism>, gravity: Place, share: number, at: number): number {
  const { level } = fuelSurface(body, gravity, share * solidOf(body).volume);
  const height = (x: number): number => (level - dot(gravity, [x, 0, 0])) / gravity[2];
  return height(at) - height(0);
}

const checks: Readonly<Record<string, () => void>> = {
  cengel_3_12() {
    const { givens, answer } = example('cengel_3_12');
    const a = givens.speed_change_km_h / 3.6 / givens.time_s;
    const gravity: Place = [a, 0, -givens.g_m_s2];
    for (const [length, centimetres] of [
      [givens.tank_length_m, answer.rise_long_side_cm],
      [givens.tank_width_m, answer.rise_short_side_cm],
    ]) {
      const body = tankShape({
        length,
        width: 1,
        height: givens.tank_height_m,
        edgeHeight: givens.tank_height_m,
        taper: 0,
      });
      const found = rise(body, gravity, 0.6, length / 2);
      expect(Math.abs(100 * found - centimetres)).toBeLessThan(0.06);
      expect(found / (length / 2)).toBeCloseTo(answer.tan_theta, 3);
    }
  },
  white_2_cup_linear() {
    const { givens, answer } = example('white_2_cup_linear');
    const [radius, height] = [givens.mug_diameter_cm / 200, givens.mug_depth_cm / 100];
    // The mug lies along z; a prism lies along x: turn both.
    const circle = Array.from({ length: 180 }, (_, k): [number, number] => [
      radius * Math.cos((k * Math.PI) / 90),
      radius * Math.sin((k * Math.PI) / 90),
    ]);
    const body = prism(circle, height);
    const gravity: Place = [9.81, givens.ax_m_s2, 0];
    const { level } = fuelSurface(body, gravity, (givens.liquid_depth_cm / givens.mug_depth_cm) * solidOf(body).volume);
    const depth = (y: number): number => (level - gravity[1] * y) / gravity[0];
    expect((Math.atan2(givens.ax_m_s2, 9.81) * 180) / Math.PI).toBeCloseTo(answer.theta_deg, 1);
    expect(Math.abs(100 * (depth(0) - depth(radius)) - answer.rise_at_wall_cm)).toBeLessThan(0.01);
    // Rim at −height/2, surface at the wall deeper than that: nothing spills.
    expect(depth(radius) > -height / 2).toBe(!answer.spills);
  },
  control_line_scale() {
    const gravity = gravityInFlight({
      speed: 25,
      radius: 18,
      elevation: 0,
      outboardLow: 0,
      sideslip: 0,
      pitch: 0,
      gravity: 9.80665,
    });
    expect(gravity[1] / 9.80665).toBeCloseTo(3.54, 2);
    expect((Math.atan2(gravity[1], -gravity[2]) * 180) / Math.PI).toBeCloseTo(74, 0);
  },
};

describe('fuel surfaces as published', () => {
  it.each(usedFlightRows(FILE))('%s', (name) => checks[name]!());
});
