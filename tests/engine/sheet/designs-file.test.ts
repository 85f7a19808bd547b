import { expect, test } from 'vitest';
import { openDesigns, serialiseDesigns, tooLargeForAny } from '../../../engine/sheet/designs-file';
import { openText, serialise } from '../../../engine/sheet/file';
import { smallDesign } from './small';

const owl = { ...smallDesign(), title: 'Barn owl' };
const heron = { ...smallDesign(), title: 'Heron' };

const spoilt = (change: (file: { version: unknown; designs: Record<string, unknown>[] }) => void): string => {
  const file = JSON.parse(serialiseDesigns([owl, heron]));
  change(file);
  return JSON.stringify(file);
};
const messageOf = (text: string): string => {
  const opened = openDesigns(text);
  if (opened.ok) throw new Error('It was opened.');
  return opened.message;
};

test('a file with several designs gives them again, and one with one design that', () => {
  const text = serialiseDesigns([owl, heron]);
  expect(openDesigns(text)).toEqual({ ok: true, designs: [owl, heron] });
  expect(serialiseDesigns([owl, heron])).toBe(text);
  expect(openDesigns(serialise(owl))).toEqual({ ok: true, document: owl });
});

test('what is wrong in one of them is told with its place, and nothing is opened', () => {
  expect(messageOf(spoilt((file) => (file.designs[1]!.title = 3)))).toBe(
    'This file cannot be opened. One thing in it is not as it should be: designs[1].title: expected a text, found 3. Nothing was opened.',
  );
  expect(messageOf(spoilt((file) => (file.designs[0]!.version = 99)))).toBe(
    'This file cannot be opened. One thing in it is not as it should be: designs[0].version: expected at most 4, found 99. Nothing was opened.',
  );
  expect(messageOf(spoilt((file) => (file.designs[0]!.format = 'other')))).toBe(
    'This file cannot be opened. One thing in it is not as it should be: designs[0].format: expected "tetherwright", found "other". Nothing was opened.',
  );
  expect(messageOf(spoilt((file) => (file.designs = [])))).toBe(
    'This file cannot be opened. One thing in it is not as it should be: designs: expected a list of at least one design, found an empty list. Nothing was opened.',
  );
  expect(messageOf(spoilt((file) => Object.assign(file, { hangar: 'Saltmarsh' })))).toBe(
    'This file cannot be opened. One thing in it is not as it should be: hangar: expected nothing of that name, found a value. Nothing was opened.',
  );
  expect(messageOf(spoilt((file) => (file.version = '1')))).toBe(
    'This file cannot be opened. One thing in it is not as it should be: version: expected 1, found "1". Nothing was opened.',
  );
  expect(messageOf(spoilt((file) => (file.version = 2)))).toBe(
    'This file with several designs was written by a newer Tetherwright (version 2; this one reads up to 1). Nothing was opened. Load the newest Tetherwright and open the file there.',
  );
  expect(messageOf(serialiseDesigns([owl]).slice(0, 60))).toMatch(/^This file is broken at line 4, column /);
});

test('it may be larger than a single design, and says so where one is asked for', () => {
  expect(tooLargeForAny(50_000_000)).toBeUndefined();
  expect(tooLargeForAny(50_000_001)!.message).toBe(
    'This file is too large: 50.1 MB, and at most 50 MB are read. Nothing was opened. A design has far less; look whether it is the right file.',
  );
  const one = openText(serialiseDesigns([owl]));
  expect(!one.ok && one.message).toBe(
    'This file holds several designs, and one is asked for here. Nothing was opened. Open it on the page, which keeps each of them, and save the one that you want.',
  );
});
