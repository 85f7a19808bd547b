import { expect, test } from 'vitest';
import { measureAllocation } from '../../bench/allocation';

test('a design of a sweep with the whole flight leaves less than 200 bytes on the heap', () => {
  expect(measureAllocation()).toBeLessThan(200);
});
