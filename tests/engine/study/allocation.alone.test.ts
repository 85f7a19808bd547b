import { expect, test } from 'vitest';
import { measureAllocation } from '../../speed/allocation';

// Some 290 bytes where code is compiled as it runs, 190 where a second thread compiles it again later.
test('a design of a sweep with the whole flight leaves less than 330 bytes on the heap', () => {
  expect(measureAllocation()).toBeLessThan(330);
});
