import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { jsonSchema } from '../../../.ci/json-schema.mjs';
import { VERSION } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import * as declared from '../../../engine/sheet/schema';
import { type Schema, spoil, valueFrom } from './from-schema';
import { randomFrom } from './random';

const data = new URL('../../../data/', import.meta.url);
const designs = new URL('../../designs/', import.meta.url);
const published = readFileSync(new URL('tetherwright.schema.json', data), 'utf8');
const schema: Schema = JSON.parse(published);

/** What a validator that knows only the published schema says to each file. */
function secondOpinion(files: readonly string[]): boolean[] {
  const script = fileURLToPath(new URL('second-validator.mjs', import.meta.url));
  const input = JSON.stringify({ schema, files });
  return JSON.parse(execFileSync(process.execPath, [script], { input, encoding: 'utf8', env: {} }));
}

test('the published schema is what the declarations say; if not, run npm run schema', () => {
  expect(published).toBe(jsonSchema(declared));
});

test('the designs that are stored pass by the published schema', () => {
  const files = [new URL('designs/', data), designs].flatMap((folder) =>
    readdirSync(folder).map((name) => readFileSync(new URL(name, folder), 'utf8')),
  );
  expect(files.length).toBeGreaterThan(1);
  const verdicts = secondOpinion(files);
  expect(verdicts).toEqual(files.map(() => true));
});

test('both validators accept and refuse the same 200 files (seeds 0 to 199)', () => {
  const files = Array.from({ length: 200 }, (_, seed) => {
    const random = randomFrom(seed);
    let file = valueFrom(schema, schema, random);
    // The second half is spoilt in one place or a few; a few of these are still good.
    for (let k = 0; k < (seed < 100 ? 0 : 1 + (seed % 3)); k++) file = spoil(file, declared.KEPT_NAMES, random);
    return JSON.stringify(file);
  });
  const ours = files.map((file) => openText(file).ok);
  const differ = secondOpinion(files).flatMap((verdict, seed) => (verdict === ours[seed] ? [] : [seed]));
  expect(differ).toEqual([]);
  expect(ours.slice(0, 100)).not.toContain(false);
  const bad = ours.filter((ok) => !ok).length;
  expect(bad).toBeGreaterThan(70);
});

test('a newer file and a foreign one are refused by both', () => {
  const file = JSON.parse(readFileSync(new URL('quern.tetherwright.json', designs), 'utf8'));
  const files = [
    { ...file, version: VERSION + 1 },
    { ...file, format: 'other' },
    { ...file, version: '1' },
  ].map((each) => JSON.stringify(each));
  expect(secondOpinion(files)).toEqual([false, false, false]);
  expect(files.map((each) => openText(each).ok)).toEqual([false, false, false]);
});
