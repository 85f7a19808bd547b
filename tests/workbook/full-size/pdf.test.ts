import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { bearersTemplate } from '../../../engine/blocks/engines/template';
import { gearTemplate, gearWire } from '../../../engine/blocks/gear/template';
import { guideTemplate } from '../../../engine/blocks/leadouts/template';
import { tankTemplate } from '../../../engine/blocks/tank/template';
import { wingTemplates } from '../../../engine/blocks/wing/template';
import { tankShape } from '../../../engine/physics/index';
import { pagesOf } from '../../../workbook/full-size/pages';
import { templatesPdf } from '../../../workbook/full-size/pdf';
import { type ReadPage, readPdf } from './read-pdf';

const PLACES = 1;
const root = new URL('../../../', import.meta.url).pathname;
beforeAll(() => {
  vi.stubGlobal('fetch', async (address: string) => {
    const path = address.replace(/^\/@fs/, '').replace(/\?.*$/, '');
    return new Response(readFileSync(path.startsWith(root) ? path : `${root}${path}`));
  });
});
afterAll(() => {
  vi.unstubAllGlobals();
});

/** A gear that is wider and deeper than a page, with square bends. */
const placed = {
  strap: [0, 0.03, 0] as const,
  leg: {
    ...{ diameter: 0.003, young: 2e11, shear: 8e10, between: 0.06 },
    points: [
      [0, 0, 0],
      [0, 0.15, -0.12],
    ] as const,
  },
};
const bending = { radius: 0.006, axle: 0.025, legs: 2 } as const;
const gear = () => gearTemplate(placed, bending);
const guide = () => guideTemplate({ x: 0.062, z: 0.004, spacing: 0.022, diameter: 0.003 });

const words = { design: 'Try 40', date: '2026-11-28' };
const made = async (
  templates: Parameters<typeof pagesOf>[0],
  paper: 'a4' | 'letter' = 'a4',
  units: 'metric' | 'inch_pound' = 'metric',
): Promise<readonly ReadPage[]> =>
  readPdf(await templatesPdf(pagesOf(templates, paper, { ...words, units }), { title: 'Try 40', date: words.date }));

const longBars = ({ runs, clip }: ReadPage, length: number) =>
  runs.filter(
    ({ points: [a, b] }) => b && a![1] === b[1] && a![1] > clip[3] && Math.abs(Math.abs(b[0] - a![0]) - length) < 0.1,
  );

describe('check bars', () => {
  test('every sheet has one of 100 mm, on A4 and on Letter', async () => {
    for (const [paper, size] of [
      ['a4', [210, 297]],
      ['letter', [215.9, 279.4]],
    ] as const) {
      const pages = await made([...gear(), ...guide()], paper);
      expect(pages.length).toBeGreaterThan(2);
      for (const page of pages) {
        expect([page.width, page.height].sort((a, b) => a - b)).toEqual(size.map((mm) => expect.closeTo(mm, PLACES)));
        expect(longBars(page, 100)).toHaveLength(1);
        expect(longBars(page, 101.6)).toHaveLength(0);
      }
    }
  });
  test('an inch design has one of 4 in too', async () => {
    for (const page of await made(guide(), 'letter', 'inch_pound')) {
      expect(longBars(page, 100)).toHaveLength(1);
      expect(longBars(page, 101.6)).toHaveLength(1);
    }
  });
});

test('holes stand as far apart as in the design, and as far from the leading edge', async () => {
  const [page] = await made(guide());
  // The arms of crosses: level lines of the hole's diameter and twice 2.5 mm.
  const middles = page!.runs.flatMap(({ points: [a, b] }) =>
    b && a![1] === b[1] && Math.abs(b[0] - a![0] - 8) < 0.01 ? [[(a![0] + b[0]) / 2, a![1]] as const] : [],
  );
  expect(middles).toHaveLength(2);
  expect(middles[1]![0] - middles[0]![0]).toBeCloseTo(22, PLACES);
  expect(middles[0]![1]).toBe(middles[1]![1]);
  const upright = page!.runs.flatMap(({ points: [a, b] }) =>
    b && a![0] === b[0] && a![0] < middles[0]![0] ? [a![0]] : [],
  );
  expect(upright.map((x) => middles[0]![0] - x)).toContainEqual(expect.closeTo(51, PLACES));
});

test('bends of the wire are where it says, over sheets that fit together', async () => {
  const wire = gearWire(placed, bending)!;
  const pages = pagesOf(gear(), 'a4', { ...words, units: 'metric' });
  const read = await made(gear());
  expect(read.length).toBe(pages.length);
  expect(pages.length).toBeGreaterThan(1);
  const wide = read.map(({ runs, clip }) => {
    const straight = runs.find(({ points, width }) => points.length === 2 && Math.abs(width - 3) < 0.01);
    return { left: straight!.points[0]![0], right: straight!.points[1]![0], clip };
  });
  for (const { left, right } of wide) expect(right - left).toBeCloseTo(1000 * wire.length, PLACES);
  // From sheet to sheet it is moved by a frame less what both share, and what is left by clipping covers all of it.

  const [from0, , to0] = wide[0]!.clip;
  const step = to0 - from0 - 10;
  const moves = wide.map(({ left }) => (wide[0]!.left - left) / step);
  expect(Math.max(...moves)).toBeGreaterThan(0.5);
  for (const move of moves) expect(Math.abs(move - Math.round(move)) * step).toBeLessThan(0.05);
  const marks = read[0]!.runs.flatMap(({ points: [a, b] }) =>
    b && a![0] === b[0] && Math.abs(Math.abs(a![1] - b[1]) - 10) < 0.01 ? [a![0] - wide[0]!.left] : [],
  );
  for (const { from, to } of wire.bends) {
    expect(marks).toContainEqual(expect.closeTo(1000 * from, PLACES));
    expect(marks).toContainEqual(expect.closeTo(1000 * to, PLACES));
  }
});

test('crosses of two sheets come to lie on each other', () => {
  const pages = pagesOf(gear(), 'a4', { ...words, units: 'metric' });
  // Where a cross stands on the template: its place on the page less where the template begins there.
  const crosses = pages.map(({ around, inFrame }) => {
    const [first] = inFrame;
    const origin = first!.is === 'words' ? first!.at : [0, 0];
    return around.flatMap((mark) =>
      mark.is === 'thin' && !mark.closed && mark.points[0]![1] === mark.points[1]![1]
        ? [[(mark.points[0]![0] + mark.points[1]![0]) / 2 - origin[0]!, mark.points[0]![1] - origin[1]!] as const]
        : [],
    );
  });
  const all = crosses.flat().map(([x, y]) => `${x.toFixed(3)} ${y.toFixed(3)}`);
  expect(all.length).toBeGreaterThan(0);
  for (const each of all) expect(all.filter((other) => other === each).length).toBeGreaterThan(1);
});

test('the sheets of a tank are as wide and high as its sides', async () => {
  const body = tankShape({ length: 0.06, width: 0.03, height: 0.04, edgeHeight: 0.04, taper: 0 });
  const [page] = await made(tankTemplate(body, [0.02, 0.01, 0], [0.01, 0.01, 0]));
  const sizes = page!.runs.flatMap(({ points, width }) => {
    if (points.length !== 4 || Math.abs(width - 0.25) > 0.01) return [];
    const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
    return [[Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]];
  });
  // Three views, then the six sides.
  const near = (...size: readonly [number, number]) => size.map((mm) => expect.closeTo(mm, PLACES));
  expect(sizes.slice(0, 3)).toEqual([near(60, 30), near(60, 40), near(30, 40)]);
  expect(sizes.slice(3)).toHaveLength(6);
  const round = (size: readonly number[]): string => size.map((mm) => mm.toFixed(1)).join(' × ');
  expect(sizes.slice(3).map(round).sort()).toEqual(
    ['40.0 × 30.0', '40.0 × 30.0', '60.0 × 30.0', '60.0 × 30.0', '60.0 × 40.0', '60.0 × 40.0'].sort(),
  );
});

test('bearers with their gap, holes and the travel of the engine are where the design has them', async () => {
  const engine = { station: -0.13, outboard: 0.004, sideThrust: 0, length: 0.06, width: 0.034 };
  const lugs = { along: 0.016, across: 0.029, diameter: 0.003, aft: 0.005 };
  const bearers = { front: -0.18, rear: -0.06, gap: 0.024, holes: lugs, rearmost: -0.12 };
  for (const units of ['metric', 'inch_pound'] as const) {
    const [page, more] = await made(bearersTemplate(engine, bearers), 'a4', units);
    expect(more).toBeUndefined();
    const boxes = page!.runs.flatMap(({ points, width }) => {
      if (points.length !== 4 || width > 0.3) return [];
      const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
      const [left, top] = [Math.min(...xs), Math.min(...ys)];
      return [{ left, top, wide: Math.max(...xs) - left, high: Math.max(...ys) - top }];
    });
    // The frame of the sheet comes last; on paper inboard is below.
    const [inner, outer, now, aft, forward] = boxes;
    const near = (mm: number) => expect.closeTo(mm, PLACES);
    for (const bearer of [inner!, outer!]) expect([bearer.wide, bearer.high]).toEqual([near(120), near(5)]);
    expect(inner!.top - (outer!.top + outer!.high)).toBeCloseTo(24, PLACES);
    for (const each of [now!, aft!, forward!]) expect([each.wide, each.high]).toEqual([near(60), near(34)]);
    expect(now!.left - inner!.left).toBeCloseTo(-160 + 180, PLACES);
    expect(aft!.left - now!.left).toBeCloseTo(10, PLACES);
    expect(now!.left - forward!.left).toBeCloseTo(42.5, PLACES);
    // The arms of crosses: level lines of the hole's diameter and twice 2.5 mm.
    const middles = page!.runs.flatMap(({ points: [a, b] }) =>
      b && a![1] === b[1] && Math.abs(b[0] - a![0] - 8) < 0.01
        ? [[(a![0] + b[0]) / 2 - inner!.left, a![1] - outer!.top] as const]
        : [],
    );
    expect(middles).toEqual([
      ...[
        [near(47), near(31.5)],
        [near(47), near(2.5)],
      ],
      ...[
        [near(63), near(31.5)],
        [near(63), near(2.5)],
      ],
    ]);
    // Lengths of the travel, from the middle of the engine.
    const told = page!.runs.flatMap(({ points: [a, b], width }) =>
      b && a![1] === b[1] && Math.abs(width - 0.1) < 0.01 ? [b[0] - a![0]] : [],
    );
    expect(told).toContainEqual(near(10));
    expect(told).toContainEqual(near(-42.5));
  }
});

test('ribs are as long and as thick as the wing is where they stand, in metric and inch designs', async () => {
  const wing = {
    ...{ inboardSpan: 0.5, outboardSpan: 0.5, rootChord: 0.18, inboardTipChord: 0.12, outboardTipChord: 0.12 },
    ...{ inboardSweep: 0, outboardSweep: 0, thickness: 0.15, incidence: 0 },
  };
  const [ribs] = wingTemplates(wing, 0, { count: 4, station: 0.25 });
  const told = {
    metric:
      'From the centreline 166.7\u00a0mm inboard and 166.7\u00a0mm outboard: chord 160.0\u00a0mm, thickness 24.0\u00a0mm',
    inch_pound:
      'From the centreline 6.562\u00a0in inboard and 6.562\u00a0in outboard: chord 6.299\u00a0in, thickness 0.945\u00a0in',
  };
  for (const units of ['metric', 'inch_pound'] as const) {
    const pages = await made([ribs!], 'a4', units);
    const sizes = pages.flatMap(({ runs }) =>
      runs.flatMap(({ points }) => {
        if (points.length < 100) return [];
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        return [[Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)]];
      }),
    );
    // Whole on every sheet that it touches.
    const found = new Set(sizes.map((size) => size.map((mm) => mm.toFixed(1)).join(' × ')));
    expect([...found].sort()).toEqual(['120.0 × 18.0', '140.0 × 21.0', '150.0 × 22.5', '160.0 × 24.0', '180.0 × 27.0']);
    const texts = pagesOf([ribs!], 'a4', { ...words, units }).flatMap(({ inFrame }) =>
      inFrame.flatMap((mark) => (mark.is === 'words' ? [mark.text] : [])),
    );
    expect(texts).toContain(told[units]);
  }
});

test('the same design has the same bytes', async () => {
  const bytes = async () =>
    templatesPdf(pagesOf(guide(), 'a4', { ...words, units: 'metric' }), { title: 'Try 40', date: words.date });
  expect(await bytes()).toEqual(await bytes());
});
