import { expect, test } from 'vitest';
import { dimensionBox } from '../../../workbook/drawing/dimensions';
import { strokesOf } from '../../../workbook/drawing/drawn-shapes';
import { lengthInside, overlaps } from '../../../workbook/drawing/geometry';
import { layOutPicture, type Picture } from '../../../workbook/drawing/picture';
import { captionBox } from '../../../workbook/drawing/rulings';
import { type Place, quernNames, quernShapes, quernValues } from './quern';

const layOut = (place: Place, width: number, arrangement: 'column' | 'strip' = 'column', before?: Picture): Picture =>
  layOutPicture({
    shapes: quernShapes(place),
    ghost: quernShapes(),
    names: quernNames,
    values: quernValues(place),
    arrangement,
    width,
    before,
  })!;

const said = (picture: Picture): string[] => picture.labels.map((l) => l.said);

test('each mark says its value with its unit, once', () => {
  expect(said(layOut({}, 340))).toEqual([
    'CG 46\u00a0mm',
    'guide 62\u00a0mm, 16\u00a0mm behind the CG',
    'neutral point 61.2\u00a0mm',
    'engine −150\u00a0mm',
  ]);
});

test('a guide in front of the CG is said to be ahead of it', () => {
  expect(said(layOut({ guide: 0.04 }, 340))[1]).toBe('guide 40\u00a0mm, 6\u00a0mm ahead of the CG');
});

test('the panels are dimensioned from the centreline, the fuselage by its length', () => {
  expect(layOut({}, 340).dimensions.map((d) => `${d.key} ${d.text}`)).toEqual([
    'inboard span 515',
    'outboard span 485',
    'body length 770',
  ]);
});

test.each([
  ['column', 300],
  ['column', 340],
  ['column', 560],
  ['strip', 340],
  ['strip', 360],
] as const)(
  'no two words meet on a %s of %i px while engine and guide slide over their ranges',
  (arrangement, width) => {
    let before: Picture | undefined;
    for (let k = 0; k <= 40; k++) {
      const place = { engine: -0.18 + k * 0.0015, cg: 0.034 + k * 0.0006, guide: 0.03 + k * 0.0018 };
      const picture = layOut(place, width, arrangement, before);
      const boxes = [
        ...picture.labels.map((l) => l.placed.box),
        ...picture.dimensions.map(dimensionBox),
        ...picture.captions.map(captionBox),
      ];
      for (const [n, a] of boxes.entries()) {
        for (const b of boxes.slice(n + 1))
          expect(overlaps(a, b), `${JSON.stringify([a, b])} at step ${k}`).toBe(false);
      }
      expect(picture.unplaced).toEqual([]);
      before = picture;
    }
  },
);

test.each([340, 360])(
  'on a strip of %i px the name of the neutral point does not lie over the outline of the wing',
  (width) => {
    for (let k = 0; k <= 20; k++) {
      const { labels, shapes } = layOut({ engine: -0.17 + 0.002 * k, cg: 0.036 + 0.0008 * k }, width, 'strip');
      const wing = shapes.filter((s) => s.part === 'wing' && s.view === 'plan').flatMap(strokesOf);
      expect(wing.length).toBeGreaterThan(3);
      const { placed } = labels.find((label) => label.said.startsWith('neutral point'))!;
      const over = wing.reduce((sum, stroke) => sum + lengthInside(stroke, placed.box), 0);
      expect(over, `at step ${k}`).toBeLessThan(4);
    }
  },
);

test('the marks move with the hand: equal steps of the engine are equal steps on the page', () => {
  const at = (engine: number): number =>
    layOut({ engine }, 340).shapes.find((s) => s.part === 'engine_station')!.points[0]!.y;
  expect(at(-0.148) - at(-0.15)).toBeCloseTo(at(-0.146) - at(-0.148), 9);
  expect(at(-0.148)).toBeGreaterThan(at(-0.15));
});

test('a shape with a place that has no answer is left out, its label with it', () => {
  const picture = layOut({ cg: Number.NaN }, 340);
  expect(picture.shapes.some((s) => s.part === 'cg')).toBe(false);
  expect(said(picture)).not.toContain('CG – mm');
  expect(picture.shapes.some((s) => s.part === 'wing')).toBe(true);
});

test('lengths follow the unit of the sheet', () => {
  const inches = new Map([...quernNames].map(([path, n]) => [path, n.unit === 'mm' ? { ...n, unit: 'in' } : n]));
  const picture = layOutPicture({
    shapes: quernShapes(),
    names: inches,
    values: quernValues(),
    arrangement: 'column',
    width: 340,
  })!;
  expect(picture.unit).toBe('in');
  expect(picture.dimensions[0]!.text).toBe('20.3');
  expect(picture.labels[0]!.said).toBe('CG 1.81\u00a0in');
});
