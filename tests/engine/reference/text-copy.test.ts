import { expect, test } from 'vitest';
import { makeReference } from '../../../engine/reference/index';
import { referenceFiles } from '../../../engine/reference/reference-files';
import { unparted } from '../../../engine/units/index';

const files = referenceFiles();

test('the text has a file for every chapter, and a list that leads to each', () => {
  const [first, ...chapters] = files.keys();
  expect(first).toBe('README.md');
  expect(chapters.length).toBe(makeReference().length);
  const led = [...files.get('README.md')!.matchAll(/^- \[.+\]\((.+)\)$/gm)].map(([, file]) => file);
  expect(led).toEqual(chapters);
});

test.each([...files])('%s parts no number from its unit at the end of a line', (_, text) => {
  expect(unparted(text)).toBe(text);
});

test.each([...files])('%s begins with its title and has no hole', (_, text) => {
  expect(text).toMatch(/^# [A-Z]/);
  expect(text).not.toMatch(/undefined|NaN|\[object/);
});
