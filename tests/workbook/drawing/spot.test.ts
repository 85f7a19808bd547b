import { expect, test } from 'vitest';
import { moved, placeWords } from '../../../workbook/drawing/spot';

const spot = { x: 0.1, y: -0.05, z: 0.02 };

test('in the plan the nose is up and the pilot at the left', () => {
  expect(moved('plan', spot, 'ArrowUp', 0.001)).toEqual({ ...spot, x: 0.1 - 0.001 });
  expect(moved('plan', spot, 'ArrowDown', 0.01)).toEqual({ ...spot, x: 0.1 + 0.01 });
  expect(moved('plan', spot, 'ArrowRight', 0.001)).toEqual({ ...spot, y: -0.05 + 0.001 });
  expect(moved('plan', spot, 'ArrowLeft', 0.001)).toEqual({ ...spot, y: -0.05 - 0.001 });
});

test('in the side view the nose is left', () => {
  expect(moved('side', spot, 'ArrowRight', 0.01)).toEqual({ ...spot, x: 0.1 + 0.01 });
  expect(moved('side', spot, 'ArrowUp', 0.001)).toEqual({ ...spot, z: 0.02 + 0.001 });
});

test('other keys move nothing', () => {
  expect(moved('plan', spot, 'Tab', 0.001)).toBeUndefined();
});

test('a place is said to the millimetre, in the unit of the sheet', () => {
  expect(placeWords({ x: 0.0621, y: -0.515 }, 'mm')).toBe('station 62\u00a0mm, −515\u00a0mm from the centreline');
  expect(placeWords({ x: 0.54, z: 0.082 }, 'in')).toBe('station 21.3\u00a0in, height 3.25\u00a0in');
});
