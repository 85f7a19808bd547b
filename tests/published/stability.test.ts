import { describe, expect, it } from 'vitest';
import { neutralPoint, tailVolume } from '../../engine/physics/index';
import { halfUnit, jsonOf, usedIn } from './aero-rows';

/*
 * J. D. Anderson, Introduction to Flight, chapter 7, the chain of worked examples (from memory; consistent in itself). Angles in degrees and
 * slopes per degree as printed; tail setting positive with its leading edge down, as in that book. Half a unit of the last digit.
 */
const FILE = 'aero_stability_examples.json';
const { examples } = jsonOf(FILE);
const row = (id: string) => examples.find((each: { id: string }) => each.id === id);
const near = (computed: number, printed: number): void => {
  expect(Math.abs(computed - printed), `${computed} against ${printed}`).toBeLessThanOrEqual(halfUnit(printed));
};

const wingBody = row('itf_7_2').answer;
const tail = row('itf_7_3').givens;
const volume = row('itf_7_3').answer.tail_volume;
const cg = row('itf_7_2').givens.h_cg;
const arm = tail.tail_arm_cg_to_ac_m / tail.chord_m;
/** Wing and tail in chords from the leading edge and in wing areas, the tail so far behind `from`. */
const pieces = (from: number) => [
  { x: wingBody.h_ac, strength: wingBody.a_wb_per_deg },
  { x: from + arm, strength: (tail.a_tail_per_deg * tail.tail_area_m2 * (1 - tail.deps_dalpha)) / tail.wing_area_m2 },
];
/** The book takes the tail arm from the CG, the engine to where the tail stands: the same when it is laid off from the neutral point. */
const neutral = neutralPoint(pieces(row('itf_7_5').answer.h_neutral), 0);

const checks: Readonly<Record<string, () => void>> = {
  itf_7_3: () => near(tailVolume(tail.tail_arm_cg_to_ac_m, tail.tail_area_m2, tail.chord_m, tail.wing_area_m2), volume),
  itf_7_4() {
    const each = pieces(cg);
    const lift = each.reduce((sum, { strength }) => sum + strength, 0);
    near(-lift * (neutralPoint(each, 0) - cg), row('itf_7_4').answer.dCm_dalpha_per_deg);
  },
  itf_7_5: () => near(neutral, row('itf_7_5').answer.h_neutral),
  itf_7_6: () => near(neutral - cg, row('itf_7_6').answer.static_margin),
};

describe('stability chain', () => {
  it.each(usedIn(FILE))('%s', (name) => checks[name]!());
});
