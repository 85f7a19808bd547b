import { beforeAll, describe, expect, test } from 'vitest';
import type { TraceAnswer } from '../../../engine/index';
import { overlaps } from '../../../workbook/drawing/index';
import { positionsOf, upLineOf } from '../../../workbook/pictures/linkage-joints';
import { layOutLinkage, linkageWords } from '../../../workbook/pictures/linkage-layout';
import { LinkageFigure } from '../../../workbook/pictures/linkage-picture';
import { openPage } from '../drawing/page';

/** Columns of a trace of the linkage, m and rad: full down, upright, full up. */
const columns: Readonly<Record<string, readonly [number, number, number]>> = {
  position: [-1, 0, 1],
  elevator: [-0.5, 0.02, 0.55],
  bellcrank: [-0.7, 0, 0.75],
  pivot_x: [0.06, 0.06, 0.06],
  pivot_y: [-0.03, -0.03, -0.03],
  front_x: [0.031, 0.022, 0.032],
  front_y: [-0.054, -0.03, -0.004],
  rear_x: [0.089, 0.098, 0.088],
  rear_y: [-0.006, -0.03, -0.056],
  front_guide_x: [0.051, 0.051, 0.051],
  rear_guide_x: [0.073, 0.073, 0.073],
  guide_y: [-0.5, -0.5, -0.5],
  crank_x: [0.048, 0.06, 0.073],
  crank_y: [-0.016, -0.011, -0.016],
  crank_z: [0, 0, 0],
  horn_x: [0.489, 0.5, 0.513],
  horn_y: [-0.011, -0.011, -0.011],
  horn_z: [-0.012, -0.015, -0.011],
  hinge_x: [0.5, 0.5, 0.5],
  hinge_z: [0.01, 0.01, 0.01],
  edge_x: [0.53, 0.536, 0.53],
  edge_z: [-0.008, 0.011, 0.029],
};
const traceOf = (of: typeof columns): TraceAnswer =>
  ({
    ...{ revision: 1, path: 'control.linkage', title: '', doc: '' },
    columns: Object.keys(of).map((name) => ({ name })),
    present: Object.values(of).map((each) => Float64Array.from(each)),
  }) as unknown as TraceAnswer;
const positions = positionsOf(traceOf(columns))!;

test('a linkage without an answer has no positions', () => {
  expect(positionsOf({ ...traceOf(columns), present: [] })).toBeUndefined();
  expect(positionsOf(traceOf({ ...columns, horn_x: [0.48, Number.NaN, 0.5] }))).toBeUndefined();
});

test('the up line is the one that goes inboard for full up', () => {
  expect(upLineOf(positions)).toBe('rear');
  expect(upLineOf({ ...positions, up: positions.down, down: positions.up })).toBe('front');
});

test('the picture is said in words', () => {
  expect(linkageWords('Control', positions)).toBe(
    'Control: the bellcrank from above and the horn from the pilot’s side. Full up turns the bellcrank by 43°, pulls the rear leadout in and sets the elevator 31.5° up; full down turns it by 40.1° the other way and sets the elevator 28.6° down. With the handle upright the elevator stands at 1.1° up.',
  );
  const still = { ...positions, neutral: { ...positions.neutral, elevator: 1e-15 } };
  expect(linkageWords('Control', still)).toMatch(/stands at 0°\.$/);
});

describe.each([308, 520, 770])('at %i px', (width) => {
  const page = layOutLinkage(positions, width);
  test('every label has a place inside, over no other', () => {
    expect(page.labels.map(({ text }) => text).sort()).toEqual(
      [
        ...['front leadout, down', 'full down, turned 40.1°', 'full up, turned 43°', 'hinge', 'horn', 'pivot'],
        ...['pushrod', 'pushrod', 'rear leadout, up', '28.6° down', '31.5° up', 'upright 1.1° up'],
      ].sort(),
    );
    for (const [k, { placed }] of page.labels.entries()) {
      expect(placed.box.left).toBeGreaterThanOrEqual(0);
      expect(placed.box.right).toBeLessThanOrEqual(width);
      expect(placed.box.bottom).toBeLessThanOrEqual(page.height);
      for (const other of page.labels.slice(k + 1)) expect(overlaps(placed.box, other.placed.box)).toBe(false);
    }
  });
  test('both views have one scale, and lie on the page', () => {
    const length = (key: string): number => {
      const [a, b] = page.strokes.find((stroke) => stroke.key === key)!.points as [never, never] as {
        x: number;
        y: number;
      }[];
      return Math.hypot(a!.x - b!.x, a!.y - b!.y);
    };
    // Horn 25 mm from its hinge; leadout and stabiliser are cut after 30 mm.
    expect(length('elevator neutral') / length('stabiliser')).toBeCloseTo(25 / 30, 6);
    expect(length('front leadout') / length('stabiliser')).toBeCloseTo(1, 6);
    for (const { x, y } of page.strokes.flatMap((stroke) => stroke.points)) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(width);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(page.height);
    }
  });
});

describe('on the page', () => {
  let svg: Element;
  beforeAll(() => {
    const page = openPage();
    page.show(<LinkageFigure title="Control" positions={positions} width={340} />);
    svg = page.body.querySelector('svg')!;
  });
  test('it is one picture with its words', () => {
    expect(svg.getAttribute('role')).toBe('img');
    expect(svg.getAttribute('aria-label')).toBe(linkageWords('Control', positions));
  });
  test('upright is drawn in full, full up and full down in broken lines of their own', () => {
    const dashes = [...svg.querySelectorAll('path')].map((path) => path.getAttribute('stroke-dasharray') ?? '');
    expect(dashes.filter((each) => each === '5 2.5')).toHaveLength(2);
    expect(dashes.filter((each) => each === '9 2.5 1.5 2.5 1.5 2.5')).toHaveLength(2);
    expect(dashes.filter((each) => each === '').length).toBeGreaterThan(4);
  });
});
