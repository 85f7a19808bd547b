import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { referenceFiles } from '../../../engine/reference/reference-files';

const folder = new URL('../../../data/reference/', import.meta.url);
const files = referenceFiles();
const mend = 'npm run reference writes it anew';

test('the text copy has a file for every chapter and no other', () => {
  expect(readdirSync(folder).sort(), mend).toEqual([...files.keys()].sort());
});

test.each([...files])('%s says what the declarations say', (name, text) => {
  expect(readFileSync(new URL(name, folder), 'utf8'), mend).toBe(text);
});
