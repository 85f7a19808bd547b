import { describe, expect, it } from 'vitest';
import { body } from '../../engine/blocks/body/index';
import { ITEM_DRAG, laminarFriction, plateFriction, turbulentFriction } from '../../engine/physics/index';
import { jsonOf, usedIn } from './aero-rows';

/*
 * D. P. Raymer, Aircraft Design: A Conceptual Approach, and S. F. Hoerner, Fluid-Dynamic Drag (component drag on frontal area, from memory);
 * M. Sadraey, Aircraft Performance Analysis (read second-hand). Values in use are the printed ones.
 */
const FILE = 'aero_guidelines.json';
const { component_drag: drag, flat_plate: plate } = jsonOf(FILE);
const basis = (field: 'wheel_drag' | 'wire_drag' | 'head_drag'): string => body.fields[field].basis!;

const checks: Readonly<Record<string, () => void>> = {
  'component drag regular wheel and tyre': () => {
    // The value in use, from the second source, is on the draggy side of this one.
    expect(ITEM_DRAG.wheel).toBeGreaterThanOrEqual(drag.values['regular wheel and tyre']);
  },
  'component drag wheel and tyre with fairing': () =>
    expect(basis('wheel_drag')).toContain(`about ${drag.values['wheel and tyre with fairing']}`),
  'component drag streamline strut t/c 1/6 to 1/3': () =>
    expect(basis('wire_drag')).toContain(`about ${drag.values['streamline strut t/c 1/6 to 1/3']}`),
  'component drag fork, bogey, irregular fitting': () => {
    const [low, high] = drag.values['fork, bogey, irregular fitting'];
    expect(ITEM_DRAG.cylinderHead).toBe(low);
    expect(basis('head_drag')).toContain(`${low.toFixed(1)} to ${high}`);
  },
  'component drag circular disc normal to flow': () =>
    expect(Math.abs(body.fields.cross_flow_drag.default - drag.values['circular disc normal to flow'])).toBeLessThan(
      0.05,
    ),
  'component drag cylinder side-on, Re 1e4 to 2e5': () =>
    expect(ITEM_DRAG.wire).toBe(drag.values['cylinder side-on, Re 1e4 to 2e5']),
  'second source unfaired wheel': () => expect(ITEM_DRAG.wheel).toBe(drag.second_source.values['unfaired wheel']),
  'second source cylindrical strut side-on': () =>
    expect(ITEM_DRAG.wire).toBe(drag.second_source.values['cylindrical strut side-on']),
  'flat plate laminar': () => {
    expect(plate.laminar).toBe('Cf = 1.328/sqrt(Re)');
    expect(laminarFriction(4e4)).toBeCloseTo(1.328 / Math.sqrt(4e4), 14);
  },
  'flat plate turbulent_power': () => {
    expect(plate.turbulent_power).toBe('Cf = 0.074/Re^0.2');
    expect(turbulentFriction(1e6)).toBeCloseTo(0.074 / 1e6 ** 0.2, 14);
  },
  'flat plate transition_mixed': () => {
    expect(plate.transition_mixed).toBe('Cf = Cf_turb(Re_c) - (x1/c)*(Cf_turb(Re_x1) - Cf_lam(Re_x1))');
    const [whole, front] = [2e6, 5e5];
    const mixed = 0.074 / whole ** 0.2 - (front / whole) * (0.074 / front ** 0.2 - 1.328 / Math.sqrt(front));
    expect(plateFriction(whole, front)).toBeCloseTo(mixed, 14);
  },
};

describe('drag of items and plates', () => {
  // Wheels and legs are checked with the strength of the gear.
  const here = usedIn(FILE).filter((name) => !/^(landing gear|rolling resistance)/.test(name));
  it.each(here)('%s', (name) => checks[name]!());
});
