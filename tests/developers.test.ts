import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { partsResults } from '../engine/blocks/parts/results';
import { blocks } from '../engine/blocks/registry';

const read = (file: string) => readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
const guide = read('DEVELOPERS.md');

interface Spec {
  readonly symbol?: string;
  readonly unit?: string;
  readonly suffix?: string;
  readonly title?: string;
  readonly detail?: boolean;
}

/** Every field and result by its name in a formula; the first block of a role speaks for it. */
const declared = new Map<string, Spec>();
const main = new Set<string>();
for (const { kind, role = kind, fields, results } of [
  ...blocks,
  { kind: 'parts', fields: {}, results: partsResults },
]) {
  for (const [name, spec] of Object.entries<Spec>({ ...fields, ...results } as Record<string, Spec>)) {
    const path = `${role}.${name}`;
    if (!declared.has(path)) declared.set(path, spec);
    if (name in results && !spec.detail) main.add(path);
  }
}

const glossary = [...guide.matchAll(/^\| `([a-z_]+\.[a-z_]+)`\s+\| (.*?)\s+\| (.*?)\s+\| (.*?)\s+\|$/gm)].map(
  ([, name = '', symbol, unit, title]) => ({ name, symbol, unit, title }),
);

test('the glossary has rows', () => expect(glossary.length).toBeGreaterThan(50));

test('the glossary says what the blocks declare', () => {
  const shown = ({ symbol, unit, suffix, title }: Spec) => ({ symbol, unit: unit || suffix || '–', title });
  expect(glossary).toEqual(glossary.map(({ name }) => ({ name, ...shown(declared.get(name) ?? {}) })));
});

test('the glossary names every main result', () => {
  const named = new Set(glossary.map(({ name }) => name));
  expect([...main].filter((name) => !named.has(name))).toEqual([]);
});

test('every dependency is told, and none that is not there', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json'));
  const [, section = ''] = guide.split('## Dependencies');
  const told = [...(section.split('\n## ')[0] ?? '').matchAll(/^\| (`.*?)\s*\|/gm)].flatMap(([, names = '']) =>
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
