import { expect, test } from 'vitest';
import { nearestName } from '../../../engine/formula/near';

/** A list that counts how many of its names were looked at. */
function counted(names: readonly string[]): { readonly names: readonly string[]; looked(): number } {
  let count = 0;
  const get = (list: readonly string[], key: string | symbol): unknown => {
    if (typeof key === 'string' && /^\d+$/.test(key)) count++;
    return Reflect.get(list, key);
  };
  return { names: new Proxy(names, { get }), looked: () => count };
}

test('a word is looked for in a list once', () => {
  const { names, looked } = counted(['flight.pull', 'flight.speed', 'tip_weight']);
  for (let k = 0; k < 50; k++) {
    expect(nearestName('flight.pul', names)).toBe('flight.pull');
    expect(nearestName('zzzzzz', names)).toBeUndefined();
  }
  expect(looked()).toBe(6);
});

test('a word that is longer than any name is looked for nowhere', () => {
  const { names, looked } = counted(['a'.repeat(201)]);
  expect(nearestName('a'.repeat(201), names)).toBeUndefined();
  expect(looked()).toBe(0);
  expect(nearestName('a'.repeat(200), names)).toBe('a'.repeat(201));
});

test('the last part of a dotted name is found, however long what stands before it', () => {
  expect(nearestName('pull', ['speed', 'a_very_long_name_of_a_block.pull'])).toBe('a_very_long_name_of_a_block.pull');
});

test('so many words are known of a list that the last of them are told as the first', () => {
  const { names, looked } = counted(['tip_weight']);
  for (let k = 0; k < 5001; k++) nearestName(`tip_weigh${k}`, names);
  expect(looked()).toBe(5001);
  expect(nearestName('tip_weigh1', names)).toBe('tip_weight');
  expect(looked()).toBe(5002);
});
