import { describe, expect, it } from 'vitest';
import { neutralPointShare, pitchingMoment, tailVolume } from '../../engine/physics/index';
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
const momentAt = (alpha: number, withTail: boolean): number =>
  pitchingMoment({
    momentAtAc: wingBody.Cm_ac,
    liftCoefficient: wingBody.a_wb_per_deg * alpha,
    cgBehindAc: wingBody.h_minus_hac,
    tailVolume: withTail ? volume : 0,
    tailSlope: tail.a_tail_per_deg,
    alpha,
    downwash: tail.deps_dalpha,
    downwashAtZeroLift: tail.eps0,
    tailSetting: tail.tail_setting_deg,
  });
const neutral = neutralPointShare(wingBody.h_ac, volume, tail.a_tail_per_deg / wingBody.a_wb_per_deg, tail.deps_dalpha);

const checks: Readonly<Record<string, () => void>> = {
  itf_7_1() {
    const { givens: g, answer } = row('itf_7_1');
    const moment = pitchingMoment({
      momentAtAc: g.Cm_ac,
      liftCoefficient: g.CL,
      cgBehindAc: g.h_minus_hac,
      tailVolume: 0,
      tailSlope: 0,
      alpha: 0,
      downwash: 0,
      downwashAtZeroLift: 0,
      tailSetting: 0,
    });
    near(moment, answer.Cm_cg);
  },
  itf_7_2() {
    const g = row('itf_7_2').givens;
    near(g.CL_at_5deg / (5 - g.alpha_zero_lift_deg), wingBody.a_wb_per_deg);
    near(momentAt(1 - g.alpha_zero_lift_deg, false), g.Cm_cg_at_1deg);
    near(momentAt(7.88 - g.alpha_zero_lift_deg, false), g['Cm_cg_at_7.88deg']);
    near(g.h_cg - wingBody.h_minus_hac, wingBody.h_ac);
  },
  itf_7_3() {
    near(tailVolume(tail.tail_arm_cg_to_ac_m, tail.tail_area_m2, tail.chord_m, tail.wing_area_m2), volume);
    near(momentAt(tail.alpha_absolute_deg, true), row('itf_7_3').answer.Cm_cg);
  },
  itf_7_4() {
    const { answer } = row('itf_7_4');
    const slope = momentAt(1, true) - momentAt(0, true);
    near(slope, answer.dCm_dalpha_per_deg);
    near(momentAt(0, true), answer.Cm_0);
    near(-momentAt(0, true) / slope, answer.trim_alpha_absolute_deg);
  },
  itf_7_5: () => near(neutral, row('itf_7_5').answer.h_neutral),
  itf_7_6: () => near(neutral - row('itf_7_2').givens.h_cg, row('itf_7_6').answer.static_margin),
};

describe('stability chain', () => {
  it.each(usedIn(FILE))('%s', (name) => checks[name]!());
});
