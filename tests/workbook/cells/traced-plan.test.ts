import { describe, expect, it } from 'vitest';
import { openText, type Shape, serialise, type TracedPlan } from '../../../engine/index';
import { refusalOf } from '../../../workbook/cells/drawing/large/picture-file';
import {
  firstPlace,
  movedTo,
  onDrawing,
  roomOfPlan,
  scaledBy,
  straightened,
  turnedBy,
} from '../../../workbook/cells/drawing/large/placing';
import { pressed } from '../../../workbook/cells/drawing/large/plan-tools';
import { withPiece } from './show-piece';

const plan: TracedPlan = {
  ...{ view: 'side', name: 'my plan.png', image: 'data:image/png;base64,AAAA', width: 400, height: 200 },
  ...{ scale: 0.002, right: 0.1, down: 0.05, angle: 0, opacity: 0.5 },
};
const DEGREE = Math.PI / 180;
/** Where a pixel of the picture, counted from its middle, comes to lie. */
const placeOf = (of: TracedPlan, x: number, y: number) => {
  const [cosine, sine] = [Math.cos(of.angle * DEGREE), Math.sin(of.angle * DEGREE)];
  return { right: of.right + of.scale * (x * cosine - y * sine), down: of.down + of.scale * (x * sine + y * cosine) };
};
const near = ({ right, down }: { right: number; down: number }) => ({
  right: expect.closeTo(right, 12),
  down: expect.closeTo(down, 12),
});

describe('a picture under the drawing', () => {
  const turned = { ...plan, angle: 25 };
  const [a, b] = [placeOf(turned, -120, 40), placeOf(turned, 80, -30)];
  it('is scaled so that two of its points are so far apart, the first where it was', () => {
    const laid = scaledBy(turned, a, b, 1.5)!;
    expect(placeOf(laid, -120, 40)).toEqual(near(a));
    const to = placeOf(laid, 80, -30);
    expect(Math.hypot(to.right - a.right, to.down - a.down)).toBeCloseTo(1.5, 12);
    expect(scaledBy(turned, a, a, 1)).toBeUndefined();
    expect(scaledBy(turned, a, b, 0)).toBeUndefined();
  });
  it('is turned so that two points lie level or upright, whichever is nearer', () => {
    const level = straightened(turned, a, b);
    expect(placeOf(level, -120, 40).down).toBeCloseTo(placeOf(level, 80, -30).down, 4);
    expect(placeOf(level, -120, 40)).toEqual(near(a));
    const steep = straightened(
      { ...plan, angle: 80 },
      placeOf({ ...plan, angle: 80 }, 0, 0),
      placeOf({ ...plan, angle: 80 }, 100, 0),
    );
    expect(placeOf(steep, 0, 0).right).toBeCloseTo(placeOf(steep, 100, 0).right, 12);
    expect(turnedBy(plan, plan, 200).angle).toBe(-160);
  });
  it('is moved as far as a point of it, to the datum by one press', () => {
    expect(placeOf(movedTo(turned, a, b), -120, 40)).toEqual(near(b));
    const { plan: laid } = pressed(turned, { does: 'datum', points: [] }, a);
    expect(placeOf(laid!, -120, 40)).toEqual(near({ right: 0, down: 0 }));
    const scale = { does: 'scale', points: [] } as const;
    const one = pressed(turned, scale, a).placing!;
    expect(pressed(turned, one, b).placing).toEqual({ does: 'scale', points: [a, b] });
    expect(pressed(turned, { ...scale, points: [a, b] }, b).placing!.points).toEqual([b]);
  });
  it('lies with its nose as the view has it, and first fills the model', () => {
    expect(onDrawing({ x: 0.1, y: -0.2 })).toEqual({ right: -0.2, down: 0.1 });
    expect(onDrawing({ x: 0.1, z: 0.03 })).toEqual({ right: 0.1, down: -0.03 });
    const body: Shape = { view: 'side', part: 'body', points: [-0.2, 0.05, 0.6, -0.05], closed: true };
    const first = firstPlace({ width: 400, height: 100 }, 'side', [body]);
    expect(first).toEqual({ right: expect.closeTo(0.2, 12), down: 0, scale: expect.closeTo(0.002, 12), angle: 0 });
    expect(firstPlace({ width: 400, height: 100 }, 'plan', [body]).scale).toBeCloseTo(1 / 400, 12);
  });
  it('has its corners in the frame', () => {
    const [{ points }] = roomOfPlan(plan) as [Shape];
    expect(Math.min(...points.filter((_, k) => k % 2 === 0))).toBeCloseTo(0.1 - 0.4, 12);
    expect(Math.max(...points.filter((_, k) => k % 2 === 1))).toBeCloseTo(-0.05 + 0.2, 12);
  });
});

describe('a file that is no picture', () => {
  const begins = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
  const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  it('is known by how it begins, whatever it is called', () => {
    expect(refusalOf('plan.png', 1000, png)).toBeUndefined();
    expect(refusalOf('plan.jpg', 1000, Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]))).toBeUndefined();
    expect(refusalOf('plan.webp', 1000, begins('RIFFxxxxWEBPVP8 '))).toBeUndefined();
    expect(refusalOf('plan.png', 1000, begins('<svg onload="x"'))).toBe(
      '“plan.png” is no PNG, JPEG or WebP picture, and nothing else is taken: drawings that can carry a program are not. Save the plan as one of these.',
    );
    expect(refusalOf('sound.webp', 1000, begins('RIFFxxxxWAVEfmt '))).toMatch(/^“sound\.webp” is no PNG/);
    expect(refusalOf('empty', 0, new Uint8Array(0))).toMatch(/^“empty” is no PNG/);
  });
  it('is not read where it is too large', () => {
    expect(refusalOf('scan.png', 55_000_000, png)).toBe(
      '“scan.png” has 55\u00a0MB; a picture has 40\u00a0MB at most. Scan it at fewer dots an inch, or save it smaller.',
    );
  });
});

describe('a file with a picture', () => {
  const drawing = { kind: 'drawing', id: 'd9', name: 'view', title: 'View', parts: true } as const;
  const text = serialise(withPiece({ ...drawing, plan }));
  const opened = (from: string, to: string) => {
    expect(text).toContain(from);
    return openText(text.replace(from, to));
  };
  it('comes back as it was, with the picture or with the name under which a browser keeps it', () => {
    expect(openText(text)).toMatchObject({ ok: true, document: withPiece({ ...drawing, plan }) });
    const { image: _, ...without } = plan;
    const beside = withPiece({ ...drawing, plan: { ...without, kept: 'd9 1' } });
    expect(openText(serialise(beside))).toMatchObject({ ok: true, document: beside });
  });
  it('is refused with anything but pixels in it, or more than it holds', () => {
    for (const image of [
      'data:image/svg+xml;base64,AAAA',
      'https://somewhere.example/plan.png',
      'data:image/png;base64,AA"><script>',
      `data:image/png;base64,${'A'.repeat(300_000)}`,
    ]) {
      expect(opened(JSON.stringify(plan.image), JSON.stringify(image)).ok, image.slice(0, 40)).toBe(false);
    }
    expect(opened('"scale": 0.002', '"scale": 0').ok).toBe(false);
    expect(opened('"opacity": 0.5', '"opacity": 2').ok).toBe(false);
  });
});
