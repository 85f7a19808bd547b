import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const read = (file: string) => readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
const guide = read('DEVELOPERS.md');

test('it stays short enough to be read', () => expect(Buffer.byteLength(guide)).toBeLessThanOrEqual(15_000));

test('every dependency is told, and none that is not there', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json'));
  const [, section = ''] = guide.split('## Dependencies');
  const told = [...(section.split('\n## ')[0] ?? '').matchAll(/^- (`[^(]*?)\s\(/gm)].flatMap(([, names = '']) =>
    [...names.matchAll(/`([^`]+)`/g)].map(([, name]) => name),
  );
  expect(told.sort()).toEqual(Object.keys({ ...dependencies, ...devDependencies }).sort());
});

test('every folder of the map is there', () => {
  const [, map = ''] = guide.split('## Map\n\n```\n');
  const missing: string[] = [];
  let above = '';
  for (const [, indent = '', name = ''] of (map.split('\n```')[0] ?? '').matchAll(/^( {0,2})([\w.]+\/?)/gm)) {
    if (indent === '') above = name.endsWith('/') ? name : '';
    try {
      readFileSync(new URL(`../${indent ? above : ''}${name}`, import.meta.url));
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EISDIR') missing.push(`${above} ${name}`);
    }
  }
  expect(missing).toEqual([]);
});
