import { expect, it } from 'vitest';
import { cylinderDragCoefficient } from '../../../engine/physics/cylinder-drag';
import { cylinderDragOfSquare } from '../../../engine/physics/cylinder-drag-of-square';

const out = new Float64Array(3);
function at(re: number): readonly [number, number] {
  out[1] = re * re;
  cylinderDragOfSquare(out, 1);
  return [out[1]!, out[2]!];
}

it('is the drag coefficient times the Reynolds number within 1e-8, with its slope, and that itself outside of the table', () => {
  for (let logRe = Math.log(0.09); logRe < Math.log(1e6); logRe += 0.00371) {
    const re = Math.exp(logRe);
    const [value, slope] = at(re);
    expect(Math.abs(value / (re * cylinderDragCoefficient(re)) - 1)).toBeLessThan(1e-8);
    const [up, down] = [re * (1 + 1e-5), re * (1 - 1e-5)].map((each) => each * cylinderDragCoefficient(each));
    expect(Math.abs((up! - down!) / (4e-5 * re * re) / slope - 1)).toBeLessThan(1e-5);
  }
  for (const re of [0.003, 0.08, 1.1e6, 3e7]) expect(at(re)[0]).toBeCloseTo(re * cylinderDragCoefficient(re), 12);
});

it('is 0 in still air, and refuses what is no square', () => {
  expect(at(0)).toEqual([0, 0]);
  expect(() => at(Number.NaN)).toThrow('Reynolds number');
});
