import { describe, expect, it } from 'vitest';
import { partsResults } from '../../../engine/blocks/parts/results';
import { FOLD_NAMES, foldParts, momentsAboutCg } from '../../../engine/physics/mass';
import {
  AT_TOLD_BY,
  finishMass,
  PART_STRIDE,
  type PartRow,
  rodMass,
  sheetMass,
  solidMass,
  stackMass,
  TOLD_BY,
  writePart,
} from '../../../engine/physics/part';

const bare = { weighed: Number.NaN, sizeX: 0, sizeY: 0, sizeZ: 0, massTolerance: 0, stationTolerance: 0 };
const point = (estimate: number, x: number, y: number, z: number, more: Partial<PartRow> = {}): PartRow => ({
  ...bare,
  estimate,
  x,
  y,
  z,
  ...more,
});
function rowsOf(parts: readonly PartRow[]): Float64Array {
  const rows = new Float64Array(parts.length * PART_STRIDE);
  parts.forEach((part, i) => {
    writePart(part, rows, i * PART_STRIDE, 1);
  });
  return rows;
}
function fold(
  parts: readonly PartRow[],
  fuel: readonly number[] = [],
  share = 0,
  groups: readonly number[] = parts.map((_, i) => i),
) {
  const out = new Float64Array(FOLD_NAMES.length);
  const rows = rowsOf(parts);
  // The spread is typed here, and stands for that of an estimate where parts go together.
  const goes = (i: number): boolean => groups.filter((group) => group === groups[i]).length > 1;
  for (const i of groups.keys()) if (goes(i)) rows[i * PART_STRIDE + AT_TOLD_BY] = TOLD_BY.estimate;
  const why = foldParts(
    rows,
    parts.map((_, i) => fuel.includes(i)),
    share,
    out,
    Int32Array.from(groups),
    new Float64Array(6 * parts.length),
  );
  return { why, ...Object.fromEntries(FOLD_NAMES.map((name, i) => [name, out[i]!])) } as { why?: string } & Record<
    (typeof FOLD_NAMES)[number],
    number
  >;
}

describe('mass of one part', () => {
  it('is area × thickness × density for a sheet', () => {
    expect(sheetMass(0.1, 0.005, 160)).toBeCloseTo(0.08, 15);
  });
  it('is area × areal mass for a stack and a finish', () => {
    expect(stackMass(0.1, 0.8)).toBeCloseTo(0.08, 15);
    expect(finishMass(0.1, 0.06)).toBeCloseTo(0.006, 15);
  });
  it('is section × length × density for a rod', () => {
    expect(rodMass(2, 0.003, 7800)).toBeCloseTo(Math.PI * 0.0015 ** 2 * 2 * 7800, 15);
  });
  it('is volume × density for a solid', () => {
    expect(solidMass(2e-5, 11340)).toBeCloseTo(0.2268, 15);
  });
  it('lets a cut-out take mass away', () => {
    expect(sheetMass(-0.1, 0.005, 160)).toBeCloseTo(-0.08, 15);
    expect(solidMass(-1e-5, 160)).toBeCloseTo(-0.0016, 15);
  });
  it('refuses sizes below nothing, with value and limit', () => {
    expect(() => sheetMass(1, -0.001, 160)).toThrow(new RangeError('thickness is -0.001; it must be 0 or greater'));
    expect(() => rodMass(1, Number.NaN, 160)).toThrow(new RangeError('diameter is NaN; it must be 0 or greater'));
    expect(() => stackMass(1, -2)).toThrow(new RangeError('areal mass is -2; it must be 0 or greater'));
  });
});

describe('a part row', () => {
  it('is written with a stride', () => {
    const out = new Float64Array(2 * PART_STRIDE).fill(-1);
    writePart(point(0.1, 1, 2, 3, { massTolerance: 0.01, stationTolerance: 0.002 }), out, 1, 2);
    expect([...out].filter((_, i) => i % 2 === 1)).toEqual([0.1, 1, 2, 3, 0, 0, 0, 0.01, 0.002, TOLD_BY.tolerance]);
    expect([...out].filter((_, i) => i % 2 === 0)).toEqual(Array(PART_STRIDE).fill(-1));
  });
  it('takes the weighed mass in place of the estimate, and scales its own inertia with it', () => {
    const [estimated, weighed] = [
      point(0.1, 0, 0, 0, { sizeX: 0.6 }),
      point(0.1, 0, 0, 0, { sizeX: 0.6, weighed: 0.2 }),
    ].map((part) => rowsOf([part]));
    expect(weighed![0]).toBe(0.2);
    expect(weighed![9]).toBe(1);
    expect(weighed![5]! / estimated![5]!).toBeCloseTo(2, 14);
  });
  it('has a tolerance where none is typed: a tenth for an estimate, half a gram on the scale, 2 mm by ruler', () => {
    const open = { massTolerance: Number.NaN, stationTolerance: Number.NaN };
    const estimated = rowsOf([point(0.1, 0, 0, 0, open)]);
    const weighed = rowsOf([point(0.1, 0, 0, 0, { ...open, weighed: 0.12 })]);
    expect(estimated[7]).toBeCloseTo(0.01, 15);
    expect(weighed[7]).toBe(0.0005);
    expect(estimated[8]).toBe(0.002);
  });
});

describe('folding parts into one body', () => {
  it('names its results as the declaration does, in the same order', () => {
    expect(Object.keys(partsResults)).toEqual([...FOLD_NAMES]);
  });
  it('finds the CG of two masses between them, by the lever', () => {
    const body = fold([point(0.3, -0.15, 0.02, 0.01), point(0.1, 0.5, -0.06, 0.05)]);
    expect(body.mass).toBeCloseTo(0.4, 15);
    expect(body.x).toBeCloseTo((0.3 * -0.15 + 0.1 * 0.5) / 0.4, 15);
    expect(body.y).toBeCloseTo((0.3 * 0.02 - 0.1 * 0.06) / 0.4, 15);
    expect(body.z).toBeCloseTo((0.3 * 0.01 + 0.1 * 0.05) / 0.4, 15);
  });
  it('gives two masses the inertia of their reduced mass at their distance', () => {
    const body = fold([point(0.3, 0, 0, 0), point(0.1, 0.4, 0, 0)]);
    expect(body.inertia_yy).toBeCloseTo(((0.3 * 0.1) / 0.4) * 0.16, 15);
    expect(body.inertia_zz).toBeCloseTo(body.inertia_yy, 15);
    expect(body.inertia_xx).toBeCloseTo(0, 15);
  });
  it('gives a box cut into eight boxes the inertia of the whole box', () => {
    const [a, b, c] = [0.4, 0.2, 0.1];
    const eighths = [-1, 1].flatMap((i) =>
      [-1, 1].flatMap((j) =>
        [-1, 1].map((k) =>
          point(0.1, 0.05 + (i * a) / 4, 0.01 + (j * b) / 4, 0.02 + (k * c) / 4, {
            sizeX: a / 2,
            sizeY: b / 2,
            sizeZ: c / 2,
          }),
        ),
      ),
    );
    const body = fold(eighths);
    expect(body.x).toBeCloseTo(0.05, 15);
    expect(body.inertia_xx).toBeCloseTo((0.8 * (b * b + c * c)) / 12, 15);
    expect(body.inertia_yy).toBeCloseTo((0.8 * (a * a + c * c)) / 12, 15);
    expect(body.inertia_zz).toBeCloseTo((0.8 * (a * a + b * b)) / 12, 15);
    expect(body.inertia_xy).toBeCloseTo(0, 15);
  });
  it('gives a slanted pair the product of inertia m Δx Δy of each', () => {
    const body = fold([point(0.1, 0.2, 0.3, 0), point(0.1, -0.2, -0.3, 0)]);
    expect(body.inertia_xy).toBeCloseTo(2 * 0.1 * 0.06, 15);
    expect(body.inertia_xz).toBeCloseTo(0, 15);
    expect(body.inertia_yz).toBeCloseTo(0, 15);
    const other = fold([point(0.1, 0.2, 0, 0.4), point(0.1, -0.2, 0, -0.4)]);
    expect([other.inertia_xy, other.inertia_yz]).toEqual([0, 0]);
    expect(other.inertia_xz).toBeCloseTo(2 * 0.1 * 0.08, 15);
    expect(fold([point(0.1, 0, 0.3, -0.4), point(0.1, 0, -0.3, 0.4)]).inertia_yz).toBeCloseTo(-2 * 0.1 * 0.12, 15);
  });
  it('has the inertia about its CG that the masses have one by one, fuel by its share', () => {
    const parts = Array.from({ length: 7 }, (_, i) =>
      point(0.02 + 0.01 * i, Math.sin(i), Math.cos(3 * i), Math.sin(5 * i)),
    );
    const body = fold(parts, [2, 5], 0.3);
    const masses = parts.map((part, i) => part.estimate * (i === 2 || i === 5 ? 0.3 : 1));
    const sum = (f: (x: number, y: number, z: number) => number): number =>
      parts.reduce((s, { x, y, z }, i) => s + masses[i]! * f(x - body.x, y - body.y, z - body.z), 0);
    expect(body.inertia_xx).toBeCloseTo(
      sum((_, y, z) => y * y + z * z),
      14,
    );
    expect(body.inertia_yy).toBeCloseTo(
      sum((x, _, z) => x * x + z * z),
      14,
    );
    expect(body.inertia_zz).toBeCloseTo(
      sum((x, y) => x * x + y * y),
      14,
    );
    expect(body.inertia_xy).toBeCloseTo(
      sum((x, y) => x * y),
      14,
    );
    expect(body.inertia_xz).toBeCloseTo(
      sum((x, _, z) => x * z),
      14,
    );
    expect(body.inertia_yz).toBeCloseTo(
      sum((_, y, z) => y * z),
      14,
    );
  });
  it('keeps masses, CG and inertia whatever the order of the rows', () => {
    const parts = Array.from({ length: 12 }, (_, i) =>
      point(0.01 * (i + 1), Math.sin(i), Math.cos(3 * i), Math.sin(5 * i)),
    );
    const one = fold(parts);
    const other = fold([...parts].reverse());
    for (const name of FOLD_NAMES) expect(other[name]).toBeCloseTo(one[name], 14);
  });
  it('moves with the datum: shifting every part shifts the CG and leaves inertia alone', () => {
    const parts = [point(0.2, 0, 0, 0), point(0.1, 0.4, 0.1, 0.05), point(0.05, -0.2, -0.3, 0.02)];
    const one = fold(parts);
    const other = fold(parts.map((part) => ({ ...part, x: part.x + 7, y: part.y - 3 })));
    expect(other.x - one.x).toBeCloseTo(7, 13);
    expect(other.y - one.y).toBeCloseTo(-3, 13);
    for (const name of ['inertia_xx', 'inertia_yy', 'inertia_zz', 'inertia_xy'] as const) {
      expect(other[name]).toBeCloseTo(one[name], 13);
    }
  });
  it('scales fuel rows, and gives empty, half and full beside the share as set', () => {
    const parts = [point(0.8, 0.05, 0, 0), point(0.06, -0.05, -0.01, 0)];
    const body = fold(parts, [1], 0.25);
    expect(body.mass).toBeCloseTo(0.815, 15);
    expect([body.mass_empty, body.mass_half, body.mass_full]).toEqual([0.8, 0.8 + 0.03, 0.8 + 0.06]);
    expect(body.x_empty).toBeCloseTo(0.05, 15);
    expect(body.x_full).toBeCloseTo((0.8 * 0.05 - 0.06 * 0.05) / 0.86, 15);
    expect(body.y_half).toBeCloseTo((-0.03 * 0.01) / 0.83, 15);
    const half = fold(parts, [1], 0.5);
    expect(half.mass).toBe(half.mass_half);
    expect(half.x).toBe(half.x_half);
  });
  it('adds independent tolerances by root of summed squares', () => {
    const body = fold([
      point(0.3, -0.1, 0, 0, { massTolerance: 0.003, stationTolerance: 0.001 }),
      point(0.1, 0.5, 0, 0, { massTolerance: 0.004, stationTolerance: 0.002 }),
    ]);
    expect(body.mass_sd).toBeCloseTo(0.005, 15);
    const x = 0.05;
    const byHand = Math.hypot((-0.1 - x) * 0.003, 0.3 * 0.001, (0.5 - x) * 0.004, 0.1 * 0.002) / 0.4;
    expect(body.x_sd).toBeCloseTo(byHand, 15);
    expect(body.y_sd).toBeCloseTo(Math.hypot(0.3 * 0.001, 0.1 * 0.002) / 0.4, 15);
  });
  it('has the spread of the CG that drawing parts at random gives', () => {
    const parts = [
      point(0.3, -0.1, 0, 0, { massTolerance: 0.006, stationTolerance: 0.002 }),
      point(0.2, 0.1, 0, 0, { massTolerance: 0.004, stationTolerance: 0.004 }),
      point(0.1, 0.5, 0, 0, { massTolerance: 0.004, stationTolerance: 0.003 }),
    ];
    let seed = 12345;
    const uniform = (): number => {
      seed = (Math.imul(seed, 1664525) + 1013904223) >>> 0;
      return (seed + 0.5) / 2 ** 32;
    };
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    const xs = Array.from({ length: 20000 }, () => {
      let m = 0;
      let mx = 0;
      for (const part of parts) {
        const mass = part.estimate + part.massTolerance * normal();
        m += mass;
        mx += mass * (part.x + part.stationTolerance * normal());
      }
      return mx / m;
    });
    const mean = xs.reduce((a, b) => a + b) / xs.length;
    const sd = Math.sqrt(xs.reduce((a, b) => a + (b - mean) ** 2, 0) / (xs.length - 1));
    expect(fold(parts).x_sd / sd).toBeGreaterThan(0.98);
    expect(fold(parts).x_sd / sd).toBeLessThan(1.02);
  });
  it('says how much of the model has been weighed, fuel left out', () => {
    const body = fold([point(0.1, 0, 0, 0, { weighed: 0.3 }), point(0.1, 0, 0, 0), point(0.06, 0, 0, 0)], [2], 1);
    expect(body.weighed_share).toBeCloseTo(0.75, 15);
  });
  it('has no answer for parts that weigh nothing', () => {
    for (const parts of [[], [point(0, 1, 1, 1)], [point(0.1, 0, 0, 0), point(-0.2, 0, 0, 0)]]) {
      const body = fold(parts);
      expect(body.why).toBe('weightless');
      expect(body.x).toBeNaN();
    }
  });
  it('has no answer for a tank alone', () => {
    expect(fold([point(0.06, 0, 0, 0)], [0], 1).why).toBe('weightless');
  });
});

describe('moments about the CG', () => {
  it('cancel, and their shares are of the tail-heavy side', () => {
    const parts = [point(0.3, -0.1, 0, 0), point(0.1, 0.2, 0, 0), point(0.05, 0.2, 0, 0)];
    const body = fold(parts);
    expect(body.x).toBeCloseTo(0, 15);
    const [moments, shares] = [new Float64Array(3), new Float64Array(3)];
    momentsAboutCg(rowsOf(parts), [false, false, false], 0, body.x, moments, shares);
    expect(moments[0]).toBeCloseTo(-0.03, 15);
    expect([...shares].map((s) => Math.round(s * 1e12) / 1e12)).toEqual([-1, 0.666666666667, 0.333333333333]);
  });
  it('adds masses that go together before their squares', () => {
    const three = [
      point(0.1, 0, 0, 0, { massTolerance: 0.003 }),
      point(0.1, 1, 0, 0, { massTolerance: 0.004 }),
      point(0.2, 0, 0, 0, { massTolerance: 0.012 }),
    ];
    expect(fold(three).mass_sd).toBeCloseTo(0.013, 15);
    expect(fold(three, [], 0, [0, 0, 2]).mass_sd).toBeCloseTo(Math.hypot(0.007, 0.012), 15);
    // x_cg = 0.25: (0.75 · 0.004 − 0.25 · 0.003) together, −0.25 · 0.012 by itself, over the mass.
    expect(fold(three, [], 0, [0, 0, 2]).x_sd).toBeCloseTo(Math.hypot(0.00225, 0.003) / 0.4, 15);
  });
  it('lets a cut-out of the same stuff be off the other way', () => {
    const cut = [point(0.3, 0, 0, 0, { massTolerance: 0.03 }), point(-0.1, 0, 0, 0, { massTolerance: 0.01 })];
    expect(fold(cut, [], 0, [0, 0]).mass_sd).toBeCloseTo(0.02, 15);
  });
  it('lets what the scale or a tolerance tells be off by itself, whatever it is cut from', () => {
    const open = { massTolerance: Number.NaN };
    const three = [
      point(0.1, 0, 0, 0, { ...open, weighed: 0.1 }),
      point(0.1, 0, 0, 0, open),
      point(0.1, 0, 0, 0, { massTolerance: 0.004 }),
      point(0.2, 0, 0, 0, open),
    ];
    const rows = rowsOf(three);
    const out = new Float64Array(FOLD_NAMES.length);
    foldParts(rows, [false, false, false, false], 0, out, Int32Array.of(0, 0, 0, 0), new Float64Array(24));
    expect(out[FOLD_NAMES.indexOf('mass_sd')]).toBeCloseTo(Math.hypot(0.0005, 0.03, 0.004), 15);
  });
});
