import { expect, test } from 'vitest';
import { measureAllocation } from '../../speed/allocation';

// Some 190 bytes, of code compiled to its last form; one function that is not yet adds a hundred.
test('a design of a sweep with the whole flight leaves less than 300 bytes on the heap', () => {
  expect(measureAllocation()).toBeLessThan(300);
});
