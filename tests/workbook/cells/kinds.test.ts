import { existsSync } from 'node:fs';
import { expect, test } from 'vitest';
import { knownKinds } from '../../../engine/index';
import { kindWords } from '../../../workbook/cells/kind-words';

const kinds = knownKinds;

test('every kind of cell that the sheet knows has its file and its word on the page, and no other', () => {
  expect(Object.keys(kindWords).sort()).toEqual([...kinds].sort());
  for (const kind of kinds) {
    expect(existsSync(new URL(`../../../workbook/cells/${kind}/view.tsx`, import.meta.url)), kind).toBe(true);
  }
});
