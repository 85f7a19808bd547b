import { describe, expect, it } from 'vitest';
import {
  type BodyStation,
  measureSide,
  measureSideOutline,
  type SideMeasures,
  slabWettedArea,
  slenderBodyCouple,
} from '../../../engine/physics/index';

const outline: BodyStation[] = [
  { x: -0.2, depth: 0.05 },
  { x: 0, depth: 0.09 },
  { x: 0.25, depth: 0.08 },
  { x: 0.6, depth: 0.03 },
];

function strips(stations: readonly BodyStation[], g: (x: number, d: number) => number): number {
  let sum = 0;
  const n = 4000;
  for (let k = 1; k < stations.length; k++) {
    const [a, b] = [stations[k - 1]!, stations[k]!];
    for (let j = 0; j < n; j++) {
      const f = (j + 0.5) / n;
      sum += (g(a.x + f * (b.x - a.x), a.depth + f * (b.depth - a.depth)) * (b.x - a.x)) / n;
    }
  }
  return sum;
}

describe('the side of a fuselage', () => {
  it('has the area and moments that adding strips gives', () => {
    const side = measureSide(outline);
    expect(side.area).toBeCloseTo(
      strips(outline, (_, d) => d),
      9,
    );
    expect(side.moment).toBeCloseTo(
      strips(outline, (x, d) => x * d),
      9,
    );
    expect(side.secondMoment).toBeCloseTo(
      strips(outline, (x, d) => x * x * d),
      9,
    );
    expect(side.roundVolume).toBeCloseTo(
      strips(outline, (_, d) => (Math.PI / 4) * d * d),
      9,
    );
  });
  it('of even depth is a rectangle: the slab of 0.055 m² from −0.17 to 0.60 m', () => {
    const depth = 0.055 / 0.77;
    const side = measureSide([-0.17, 0, 0.24, 0.6].map((x) => ({ x, depth })));
    expect(side.area).toBeCloseTo(0.055, 15);
    expect(side.moment / side.area).toBeCloseTo(0.215, 15);
    const centred = side.secondMoment / side.area - 0.215 ** 2;
    expect(centred).toBeCloseTo(0.77 ** 2 / 12, 15);
  });
  it('of a bay without length has nothing from it', () => {
    const step = measureSide([outline[0]!, outline[1]!, { x: 0, depth: 0.5 }]);
    expect(step.area).toBeCloseTo(measureSide(outline.slice(0, 2)).area, 15);
  });
  it('may not run backward', () => {
    expect(() => measureSide([outline[1]!, outline[0]!])).toThrow(
      new RangeError('length of a bay is -0.2; it must be 0 or greater'),
    );
    expect(() => measureSide([outline[0]!, { x: 0.1, depth: -0.02 }])).toThrow(
      new RangeError('depth is -0.02; it must be 0 or greater'),
    );
  });
});

it('slender-body couple is twice the volume of the round body of that depth', () => {
  const cone = measureSide([
    { x: 0, depth: 0 },
    { x: 0.6, depth: 0.1 },
  ]);
  expect(slenderBodyCouple(cone.roundVolume)).toBeCloseTo((2 * (Math.PI * 0.05 ** 2 * 0.6)) / 3, 15);
});

it('wetted area of a slab is its four faces', () => {
  expect(slabWettedArea(0.055, 0.012, 0.77)).toBeCloseTo(0.11 + 2 * 0.012 * 0.77, 15);
});

describe('the side of a fuselage given by its outline', () => {
  const upper = outline.flatMap(({ x, depth }) => [x, 0.01 + depth / 2]);
  const lower = [...outline].reverse().flatMap(({ x, depth }) => [x, 0.01 - depth / 2]);
  const byOutline = measureSideOutline([...upper, ...lower]);
  it('is that of the four places for the outline of the four places', () => {
    for (const [key, value] of Object.entries(measureSide(outline))) {
      expect(Math.abs(byOutline[key as keyof SideMeasures] / value - 1)).toBeLessThan(1e-12);
    }
    expect(byOutline.height).toBeCloseTo(0.01, 14);
    expect([byOutline.nose, byOutline.tailEnd]).toEqual([-0.2, 0.6]);
    expect(byOutline.tailBottom).toBeCloseTo(0.01 - 0.015, 15);
  });
  it('has the height of its own centre: a third up for a triangle on its base', () => {
    expect(measureSideOutline([0, 0, 0.6, 0, 0.3, 0.09]).height).toBeCloseTo(0.03, 15);
  });
});
