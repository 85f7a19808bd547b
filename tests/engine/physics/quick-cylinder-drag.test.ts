import { expect, it } from 'vitest';
import { cylinderDragCoefficient } from '../../../engine/physics/cylinder-drag';
import { quickCylinderDrag } from '../../../engine/physics/quick-cylinder-drag';

it('is the fit itself within 1e-9 from creeping flow to the last Reynolds number of the table, and exactly outside of it', () => {
  for (let log = -1; log < 6; log += 0.00137) {
    const re = 10 ** log;
    expect(Math.abs(quickCylinderDrag(re) / cylinderDragCoefficient(re) - 1)).toBeLessThan(1e-9);
  }
  for (const re of [0.003, 0.0999, 1.1e6, 3e7]) expect(quickCylinderDrag(re)).toBe(cylinderDragCoefficient(re));
});

it('refuses what is no Reynolds number', () => {
  expect(() => quickCylinderDrag(0)).toThrow('Reynolds number');
  expect(() => quickCylinderDrag(Number.NaN)).toThrow('Reynolds number');
});
