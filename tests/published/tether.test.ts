import { describe, expect, it } from 'vitest';
import { endsOf, lineDrag, lineShape, type TurningLines } from '../../engine/physics/index';
import { jsonOf } from './aero-rows';
import { usedFlightRows } from './flight-rows';

/*
 * Drag of a straight tether whose speed grows with distance from its fixed end: airborne wind energy literature (van
 * der Vlugt et al., Renewable Energy 131 (2019) 83-99, equation recalled; Tveide, AWEC 2019, by a technical brief that
 * was read). Exact formulas: to 1e-12.
 */
const FILE = 'tether_drag.json';
const file = jsonOf(FILE);
const [rho, Cd, d, L, V] = [1.2, 1.1, 0.003, 200, 30];
const tether: TurningLines = {
  count: 1,
  diameter: d,
  handleReach: 0,
  guideRadius: L,
  dragCoefficient: Cd,
  dragFactor: 1,
  kinematicViscosity: 1.5e-5,
  density: rho,
};
const omega = V / L;
const full = 0.5 * rho * V * V * Cd * d * L;

/** What guide and hand feel of the drag, off the shape of weightless lines so tight that they are straight. */
function dragOfShape(handle: number, guideRadius: number): { guide: number; hand: number } {
  const bundle = { ...tether, linearMass: 0, gravity: 9.80665, rate: omega };
  const shape = lineShape(bundle, { guideRadius, elevation: 0, pull: 1e5 * full, handle });
  const { drag, handlePull, handleTrail } = endsOf(shape, 0, omega);
  return { guide: drag, hand: handlePull * Math.sin(handleTrail) };
}

const checks: Readonly<Record<string, () => void>> = {
  quarter_rule() {
    expect(lineDrag(tether, omega) / ((1 / 8) * rho * Cd * d * L * V * V)).toBeCloseTo(1, 12);
  },
  ground_end_moves() {
    const [r0, r1] = [10, 210];
    const printed = (1 / 6) * rho * omega ** 2 * (r0 ** 2 + r0 * r1 + r1 ** 2) * Cd * d * (r1 - r0);
    const { guide, hand } = dragOfShape(r0, r1);
    expect((guide + hand) / printed).toBeCloseTo(1, 6);
  },
  force_split() {
    const row = file.results.find((each: { id: string }) => each.id === 'force_split');
    expect([row.total_drag, row.share_at_outboard_end, row.share_at_inboard_end]).toEqual(['1/3', '1/4', '1/12']);
    expect(lineDrag(tether, omega) / full).toBeCloseTo(1 / 4, 12);
    const { guide, hand } = dragOfShape(0, L);
    expect(guide / full).toBeCloseTo(1 / 4, 6);
    expect(hand / full).toBeCloseTo(1 / 12, 6);
    expect((guide + hand) / full).toBeCloseTo(1 / 3, 6);
  },
  power() {
    expect((lineDrag(tether, omega) * V) / ((1 / 8) * rho * Cd * d * L * V ** 3)).toBeCloseTo(1, 12);
  },
};

describe('straight tether', () => {
  it.each(usedFlightRows(FILE))('%s', (row) => {
    expect(checks[row], `no check of ${row}`).toBeDefined();
    checks[row]!();
  });
});
