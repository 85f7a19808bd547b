import { describe, expect, it } from 'vitest';
import {
  BALSA_SHEAR,
  BIRCH_PLY_BEARING,
  FIN_END_PLATE,
  hingedEffect,
  MAPLE_ACROSS,
  NYLON_STRENGTH,
  STATIC_MERIT,
  WING_SHARE_OF_SECTION_LIFT,
} from '../../engine/physics/index';
import { csvRows } from './aero-rows';
import { measuredPropellers } from './propeller-rows';

describe('single numbers of textbooks, from memory, and what they do', () => {
  /* USAF DATCOM practice: 1.5 to 1.6. */
  it('a fin beside a stabiliser has the middle of 1.5 to 1.6 times its aspect ratio', () => {
    expect(FIN_END_PLATE).toBeCloseTo((1.5 + 1.6) / 2, 12);
  });
  /* D. P. Raymer, Aircraft Design: A Conceptual Approach, ch. 12: C_L,max = 0.9 c_l,max cos Λ. */
  it('an unswept wing reaches nine tenths of its section’s lift', () => {
    expect(WING_SHARE_OF_SECTION_LIFT).toBe(0.9);
  });
  /* Common practice, no source: an open gap costs 15 % of the effect of a hinged surface. */
  it('an open gap costs 15 %, no gap nothing', () => {
    expect(hingedEffect(0.5) / (0.5 + 1 / Math.PI)).toBeCloseTo(0.85, 12);
    expect(hingedEffect(1)).toBe(1);
  });
});

/* MPa as copied in `materials_wood.csv` and `materials_general.csv`, whose rows name their sources; maple across the grain from memory of the same table. */
describe('strengths that the strength block begins with', () => {
  const wood = (species: string, column: string): number =>
    Number(csvRows('materials_wood.csv').find((row) => row.species!.startsWith(species))![column]) * 1e6;
  it('are those of the wood and of the plastic', () => {
    expect(BALSA_SHEAR).toBeCloseTo(wood('balsa', 'shear_parallel_MPa'), 3);
    const nylon = csvRows('materials_general.csv').find((row) => row.material === 'nylon 6/6')!;
    expect(NYLON_STRENGTH / 1e6).toBe(Number(nylon.ultimate_tensile_MPa));
    expect(MAPLE_ACROSS).toBe(10.1e6);
  });
  it('are for birch plywood six tenths of the wood along its grain, a guess', () => {
    expect(BIRCH_PLY_BEARING / wood('birch, paper', 'compression_parallel_MPa')).toBeCloseTo(0.6, 12);
  });
});

/*
 * UIUC Propeller Database (see `propeller-rows.ts`): C_T^1.5 √(2/π)/C_P at rest, the power of the ideal disc over the one measured. Propellers of
 * combustion engines, coarse and fine: the guess for one of which nothing else is known.
 */
describe('merit at rest', () => {
  const merits = measuredPropellers
    .flatMap(({ still }) => [still[0]!, still.at(-1)!])
    .map(({ CT, CP }) => (CT ** 1.5 * Math.sqrt(2 / Math.PI)) / CP);
  const mean = merits.reduce((sum, merit) => sum + merit, 0) / merits.length;
  it('is guessed within a tenth of the mean of those that were measured', () => {
    expect(Math.min(...merits)).toBeLessThan(STATIC_MERIT);
    expect(Math.max(...merits)).toBeGreaterThan(STATIC_MERIT);
    expect(Math.abs(STATIC_MERIT / mean - 1), `${mean}`).toBeLessThan(0.1);
  });
});
