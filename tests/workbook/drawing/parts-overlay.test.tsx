import { signal } from '@preact/signals';
import { describe, expect, test, vi } from 'vitest';
import { frameFor } from '../../../workbook/drawing/frame';
import { type PartsHand, PartsOverlay } from '../../../workbook/drawing/parts-overlay';
import { alongBody, areaOf, markOf, type PlacedPart, roomOf } from '../../../workbook/drawing/placed-part';
import { openPage } from './page';

const part = (path: string, x: number, also: Partial<PlacedPart> = {}): PlacedPart => ({
  path,
  title: path,
  at: { x, y: 0.01, z: -0.02 },
  size: { x: 0.06, y: 0.03, z: 0.04 },
  round: false,
  share: 0.25,
  ...also,
});
const engine = part('parts.engine', -0.12);
const weight = part('parts.weight', 0.5, { size: undefined });
const frame = frameFor(
  roomOf([engine, weight, part('parts.wing', 0.1, { size: { x: 0.2, y: 1, z: 0.02 } })]),
  'column',
  340,
)!;

describe('a part on the drawing', () => {
  test('is its box to scale in each view, about its centre of gravity', () => {
    const plan = markOf(frame, 'plan', engine);
    expect(plan).toMatchObject({ is: 'box', width: 0.03 * frame.scale, height: 0.06 * frame.scale });
    const side = markOf(frame, 'side', engine);
    expect(side).toMatchObject({ is: 'box', width: 0.06 * frame.scale, height: 0.04 * frame.scale });
    const { origin } = frame.views.side!;
    expect(side.at.x).toBeCloseTo(origin.x - 0.12 * frame.scale, 9);
    expect(side.at.y).toBeCloseTo(origin.y + 0.02 * frame.scale, 9);
  });
  test('without lengths is a disc whose area goes with its share of the moment', () => {
    const [one, four] = [0.1, 0.4].map((share) => markOf(frame, 'plan', { ...weight, share }));
    expect(one!.is).toBe('disc');
    expect(areaOf(four!) / areaOf(one!)).toBeCloseTo(4, 9);
    expect(markOf(frame, 'plan', { ...weight, share: -0.1 })).toEqual(one);
    expect(markOf(frame, 'plan', { ...weight, share: Number.NaN })).toMatchObject({ radius: 3 });
  });
  test('that is a rod across the model is a circle from the side, and never thinner than can be seen', () => {
    const axle = part('parts.axle', 0, { round: true, size: { x: 0.04, y: 0.2, z: 0.04 } });
    expect(markOf(frame, 'side', axle)).toMatchObject({ is: 'round', radius: 0.02 * frame.scale });
    expect(markOf(frame, 'plan', axle).is).toBe('box');
    const wire = part('parts.wire', 0, { round: true, size: { x: 0.4, y: 0.0001, z: 0.0001 } });
    expect(markOf(frame, 'plan', wire)).toMatchObject({ width: 1.5 });
  });
  test('stands in the frame even beyond the model', () => {
    expect(frame.views.plan!.extent.bottom).toBeGreaterThanOrEqual(0.5);
    expect(frame.views.side!.extent.left).toBeLessThanOrEqual(-0.15);
  });
});

test('keys go from part to part along the body, and with Shift move the one that is taken', () => {
  const page = openPage();
  const hand = {
    taken: signal<string | undefined>(undefined),
    words: ({ title }: PlacedPart) => `${title} is there.`,
    move: vi.fn<PartsHand['move']>(),
    rest: vi.fn(),
  };
  const parts = [weight, engine];
  expect(alongBody(parts)).toEqual([engine, weight]);
  const show = () =>
    page.show(
      <svg>
        <title>Drawing</title>
        <PartsOverlay frame={frame} parts={parts} unit="mm" hand={hand} />
      </svg>,
    );
  show();
  const keys = (view: string) => page.body.querySelector<SVGGElement>(`[data-parts="${view}"] [tabindex]`)!;
  const press = (view: string, key: string, shiftKey = false) => {
    const event = new (globalThis.window as unknown as { Event: typeof Event }).Event('keydown', { bubbles: true });
    keys(view).dispatchEvent(Object.assign(event, { key, shiftKey }));
    show();
  };
  press('plan', 'ArrowRight');
  expect(hand.taken.value).toBe('parts.engine');
  press('plan', 'End');
  expect(hand.taken.value).toBe('parts.weight');
  press('plan', 'ArrowLeft');
  expect(keys('plan').getAttribute('aria-label')).toBe(
    'Parts in the plan. parts.engine is there. Arrow keys go from part to part; with Shift they move the one that is taken by 1\u00a0mm.',
  );
  press('plan', 'ArrowUp', true);
  expect(hand.move).toHaveBeenLastCalledWith(engine, { x: -0.121, y: 0.01 }, 0);
  press('side', 'ArrowUp', true);
  expect(hand.move).toHaveBeenLastCalledWith(engine, { x: -0.12, z: -0.019 }, 0);
  expect(hand.rest).toHaveBeenCalledTimes(2);
  press('side', 'Escape');
  expect(hand.taken.value).toBeUndefined();
});

test('parts that are only looked at have no stops for keys', () => {
  const page = openPage();
  page.show(
    <svg>
      <title>Drawing</title>
      <PartsOverlay frame={frame} parts={[engine, weight]} unit="mm" />
    </svg>,
  );
  expect(page.body.querySelectorAll('[data-placed]')).toHaveLength(4);
  expect(page.body.querySelector('[tabindex]')).toBeNull();
});
