import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const folder = new URL('.', import.meta.url);
const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) => /\.test\.tsx?$/.test(file));

test('a file that puts something else in a module’s place says so in its name, and gets a process of its own', () => {
  const mocks = files.filter((file) => /^vi\.(do)?mock\(/im.test(readFileSync(new URL(file, folder), 'utf8')));
  expect(mocks.length).toBeGreaterThan(0);
  expect(mocks.filter((file) => !file.includes('.alone.test.'))).toEqual([]);
});
