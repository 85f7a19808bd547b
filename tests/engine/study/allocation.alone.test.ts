import { expect, test } from 'vitest';
import { measureAllocation } from '../../speed/allocation';

// 150 bytes where code is compiled as it runs, as here; 182 have been seen where a second thread compiles.
test('a design of a sweep with the whole flight leaves less than 200 bytes on the heap', () => {
  expect(measureAllocation()).toBeLessThan(200);
});
