import { expect, test } from 'vitest';
import { measureAllocation } from '../../speed/allocation';

// 294 bytes where code is compiled as it runs, as here; 190 to 370 where a second thread compiles, by how far it has come.
test('a design of a sweep with the whole flight leaves less than 330 bytes on the heap', () => {
  expect(measureAllocation()).toBeLessThan(330);
});
