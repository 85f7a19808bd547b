import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { knownKinds } from '../../../engine/sheet/cells/index';
import { kindWords } from '../../../workbook/cells/kind-words';

const kinds = knownKinds;
/** Kinds whose folder is called as the code calls them. */
const inCode: Partial<Record<string, string>> = {
  model: 'block',
  trial_series: 'sweep',
  tolerances: 'spread',
  what_helps: 'levers',
  what_mends: 'mends',
  best_compromises: 'best',
};

test('every kind of cell that the sheet knows has its file and its word on the page, and no other', () => {
  expect(Object.keys(kindWords).sort()).toEqual([...kinds].sort());
  for (const kind of kinds) {
    expect(existsSync(new URL(`../../../workbook/cells/${inCode[kind] ?? kind}/view.tsx`, import.meta.url)), kind).toBe(
      true,
    );
  }
});
