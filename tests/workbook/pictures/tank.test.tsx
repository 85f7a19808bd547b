import { describe, expect, test } from 'vitest';
import { TANK_PARTS, TANK_VIEWS, type TraceAnswer, type TraceColumn } from '../../../engine/index';
import { LENGTH, ONE, PRESSURE, VOLUME } from '../../../engine/units/index';
import { layOutTank } from '../../../workbook/pictures/tank-layout';
import { headIn, readTankOutlines } from '../../../workbook/pictures/tank-outlines';
import { Fuel } from '../../../workbook/pictures/tank-picture';
import { tankSentences } from '../../../workbook/pictures/tank-words';
import { normalised, openPage } from '../drawing/page';

/** A made-up tank of 60 × 30 × 40 mm behind its spray bar, empty, half full and full. */
type Row = readonly [left: number, view: string, part: string, head: number, ...points: number[]];
const STILL = Number.NaN;
const level = (left: number, share: number): Row[] => [
  ...(share > 0
    ? ([
        [left, 'plan', 'fuel', STILL, 0, 15 - 30 * share, 60, 15 - 30 * share, 60, 15, 0, 15],
        [left, 'end', 'fuel', STILL, 15 - 30 * share, -20, 15, -20, 15, 20, 15 - 25 * share, 20],
        [left, 'rest', 'fuel', STILL, 0, -20, 60, -20, 60, -20 + 40 * share, 0, -20 + 40 * share],
      ] as Row[])
    : []),
  ...(['plan', 'end', 'rest'] as const).map(
    (view): Row => [
      left,
      view,
      share > 0 ? 'pickup' : 'uncovered',
      STILL,
      ...(view === 'end' ? [13, 0] : [57, view === 'plan' ? 13 : 0]),
    ],
  ),
  ...(share > 0
    ? ([
        [left, 'end', 'head', 400 * share - 300, 0, 14, -6, 10],
        [left, 'rest', 'head', 84 * (share - 0.6), -50, 10 + 10 * (share - 0.6), -50, 10],
      ] as Row[])
    : []),
];
const rows: readonly Row[] = [
  [STILL, 'plan', 'tank', STILL, 0, -15, 60, -15, 60, 15, 0, 15],
  [STILL, 'end', 'tank', STILL, -15, -20, 15, -20, 15, 20, -15, 20],
  [STILL, 'rest', 'tank', STILL, 0, -20, 60, -20, 60, 20, 0, 20],
  [STILL, 'plan', 'vent', STILL, 48, 10],
  [STILL, 'end', 'vent', STILL, 10, 0],
  [STILL, 'rest', 'vent', STILL, 48, 0],
  [STILL, 'plan', 'spray', STILL, -50, 0],
  [STILL, 'end', 'spray', STILL, -6, 10],
  [STILL, 'rest', 'spray', STILL, -50, 10],
  ...level(0, 0),
  ...level(36e-6, 0.5),
  ...level(72e-6, 1),
];
const corners = rows.flatMap(([left, view, part, head, ...points]) =>
  points.flatMap((x, k) =>
    k % 2 === 1
      ? []
      : [
          [
            ...[left, TANK_VIEWS.findIndex((each) => each === view), TANK_PARTS.findIndex((each) => each === part)],
            ...[x / 1000, points[k + 1]! / 1000, head],
          ],
        ],
  ),
);
const column = (name: string, unit: string, dimension: TraceColumn['dimension']): TraceColumn => ({
  ...{ name, title: name, unit, dimension, symbol: '', suffix: '', doc: '' },
});
const trace: TraceAnswer = {
  ...{ revision: 1, path: 'tank.views', title: 'How the fuel lies', doc: '' },
  columns: [
    ...[column('left', 'mL', VOLUME), column('view', '', ONE), column('part', '', ONE)],
    ...[column('along', 'mm', LENGTH), column('up', 'mm', LENGTH), column('head', 'Pa', PRESSURE)],
  ],
  present: Array.from({ length: 6 }, (_, c) => Float64Array.from(corners, (corner) => corner[c]!)),
};
const told = { surfaceAngle: '74.2°', unusable: '1.28\u00a0mL', set: 'metric' } as const;
const outlines = readTankOutlines(trace);

test('corners are gathered into outlines, level by level', () => {
  expect(outlines.still).toHaveLength(9);
  expect(outlines.levels.map(({ left, outlines: of }) => [left, of.length])).toEqual([
    [0, 3],
    [36e-6, 8],
    [72e-6, 8],
  ]);
  expect(outlines.still[0]!.points).toHaveLength(4);
  expect(headIn(outlines.levels[2]!.outlines, 'end')).toBe(100);
  expect(headIn(outlines.levels[0]!.outlines, 'end')).toBeUndefined();
});

test('it says what the fuel does in flight and at rest, and that the pickup is uncovered', () => {
  const said = (k: number, left: string): string => tankSentences(outlines.levels[k]!.outlines, left, told).join(' ');
  expect(said(2, '72\u00a0mL')).toBe(
    'With 72\u00a0mL left the head in flight is 100\u00a0Pa: fuel is pressed to the engine. The fuel stands at 74.2° to the wing; the pickup uncovers at 1.28\u00a0mL. At rest the head is 33.6\u00a0Pa: fuel stands above the spray bar and floods the engine.',
  );
  expect(said(1, '36\u00a0mL')).toBe(
    'With 36\u00a0mL left the head in flight is −100\u00a0Pa: the engine must suck. The fuel stands at 74.2° to the wing; the pickup uncovers at 1.28\u00a0mL. At rest the head is −8.4\u00a0Pa: fuel stands below the spray bar and drains back.',
  );
  expect(said(0, '0\u00a0mL')).toBe(
    'With 0\u00a0mL left the pickup is uncovered in flight: the engine draws air. The fuel stands at 74.2° to the wing; the pickup uncovers at 1.28\u00a0mL. At rest the pickup is uncovered.',
  );
});

describe.each([308, 770, 1200])('at %i px', (width) => {
  test('every view keeps within its own place, at one scale', () => {
    const layout = layOutTank(outlines, width);
    for (const { view, area, place } of layout.views) {
      const points = [...outlines.still, ...outlines.levels.flatMap((each) => each.outlines)]
        .filter((each) => each.view === view)
        .flatMap((each) => each.points.map(place));
      for (const { x, y } of points) {
        expect(x).toBeGreaterThanOrEqual(area.left - 1e-9);
        expect(x).toBeLessThanOrEqual(area.right + 1e-9);
        expect(y).toBeGreaterThan(area.top);
        expect(y).toBeLessThanOrEqual(area.bottom);
      }
      expect(area.right).toBeLessThanOrEqual(width + 1e-9);
      expect(area.bottom).toBeLessThanOrEqual(layout.height + 1e-9);
      const [a, b] = [place({ x: 0, y: 0 }), place({ x: 0.01, y: 0.01 })];
      expect([b.x - a.x, a.y - b.y].map((d) => d / layout.scale)).toEqual([
        expect.closeTo(0.01, 9),
        expect.closeTo(0.01, 9),
      ]);
    }
  });
});

test.each([
  ['full', 1, 770],
  ['empty', 0, 770],
  ['full', 1, 308],
] as const)('the %s tank at slide %d and %i px is the one that was looked at', async (name, share, width) => {
  const page = openPage();
  page.show(<Fuel {...{ outlines, share, width, told }} unit="mL" title="Tank" onShare={() => undefined} />);
  const svg = page.body.querySelector('svg')!;
  expect(page.body.querySelector('input')!.getAttribute('aria-valuetext')).toBe(
    share === 1 ? '72\u00a0mL' : '0\u00a0mL',
  );
  await expect(normalised(svg)).toMatchFileSnapshot(`tank-${name}-${width}.svg.snap`);
});
