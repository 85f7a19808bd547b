import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { gearTemplate, gearWire } from '../../../engine/blocks/gear/template';
import { guideTemplate } from '../../../engine/blocks/leadouts/template';
import { tankTemplate } from '../../../engine/blocks/tank/template';
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

test('the same design has the same bytes', async () => {
  const bytes = async () =>
    templatesPdf(pagesOf(guide(), 'a4', { ...words, units: 'metric' }), { title: 'Try 40', date: words.date });
  expect(await bytes()).toEqual(await bytes());
});
