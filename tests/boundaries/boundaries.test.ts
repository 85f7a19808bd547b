import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { depthsOf, fileOf, wayTo } from '../../.ci/layer-rules.mjs';
import { type Layer, layers, placeOf, ruled, sentenceOf } from '../../.ci/layers.mjs';
import { type Copy, copySources, type Outcome } from './copy';

/** A file in every layer, at every depth that the rules know, which imports all that the layer may not: one import a line. */
const PLANTED: ReadonlyMap<
  string,
  { readonly layer: Layer; readonly others: readonly Layer[]; readonly text: string }
> = new Map(
  ruled.flatMap((layer) =>
    depthsOf(layer).map((depth) => {
      const others = layers.filter((other) => other !== layer && !layer.may.includes(other.name));
      const lines = others.map(
        (other, k) =>
          `export { x${k} } from '${wayTo(layer, depth, other)}${other.kind === 'folder' ? '/planted' : ''}';`,
      );
      const file = fileOf(layer, depth, 'deeper/', 'planted.ts');
      return [file, { layer, others, text: `${lines.join('\n')}\n` }] as const;
    }),
  ),
);

/** Other ways to import, and the sentence that must refuse them. */
const OTHER_WAYS: Readonly<Record<string, string>> = {
  'engine/physics/planted-type.ts': "import type { X } from '../blocks/planted';\n\nexport type Y = X;\n",
  'engine/physics/planted-index.ts': "export { x } from '../blocks';\n",
  'engine/physics/planted-later.ts': "export const later = () => import('../sheet/planted');\n",
  'engine/physics/planted-around.ts': "export { x } from '../../engine/units/index';\n",
};

const CYCLE = {
  'engine/blocks/planted-egg.ts': "import { hen } from './planted-hen';\n\nexport const egg = () => hen;\n",
  'engine/blocks/planted-hen.ts': "export { chick as hen } from './planted-chick';\n",
  'engine/blocks/planted-chick.ts': "import { egg } from './planted-egg';\n\nexport const chick = () => egg;\n",
};

let copy: Copy;
beforeAll(() => {
  copy = copySources();
});
afterAll(() => copy.discard());

describe('lint refuses', () => {
  const layered = Object.fromEntries([...PLANTED].map(([file, { text }]) => [file, text]));
  const files: Readonly<Record<string, string>> = { ...layered, ...OTHER_WAYS, ...CYCLE };
  let lint: Outcome;
  /** What was said of one file, or of one of its lines. One line a finding. */
  const saidOf = (file: string, line: number | '' = '') =>
    lint.said.split('\n').filter((said) => said.includes(`/${file},line=${line === '' ? '' : `${line},`}`));

  beforeAll(() => {
    copy.plant(files);
    lint = copy.npmRun('lint', '--reporter=github', '--max-diagnostics=none');
    copy.remove(Object.keys(files));
  });

  test('with a failing exit code, and nothing but what was planted', () => {
    expect(lint.code).not.toBe(0);
    const found = [...lint.said.matchAll(/^::(?:error|warning) .*?file=(.*?),line=/gm)].map(([, file = '']) => file);
    const planted = Object.keys(files);
    expect(found.length).toBeGreaterThan(planted.length);
    expect(found.filter((file) => !planted.some((each) => file.endsWith(`/${each}`)))).toEqual([]);
  });

  test.each([...PLANTED])('%s', (file, { layer, others }) => {
    for (const [k, other] of others.entries()) {
      const said = saidOf(file, k + 1).join('\n');
      expect(said, `${placeOf(layer)} → ${placeOf(other)}`).toContain('title=lint/style/noRestrictedImports,');
      expect(said, `${placeOf(layer)} → ${placeOf(other)}`).toContain(sentenceOf(layer));
    }
  });

  test.each(Object.keys(OTHER_WAYS))('%s', (file) => {
    expect(saidOf(file).join('\n')).toContain(sentenceOf(layers.find(({ name }) => name === 'physics')!));
  });

  test.each(Object.keys(CYCLE))('the import cycle through %s', (file) => {
    expect(saidOf(file).join('\n')).toContain('title=lint/suspicious/noImportCycles,');
    expect(saidOf(file).join('\n')).toContain('This import is part of a cycle.');
  });
});

describe('the type check refuses', () => {
  const files = {
    'engine/physics/planted-screen.ts': "import { x } from '../../workbook/planted';\n\nexport const y = x;\n",
    'workbook/planted.ts': 'export const x = 1;\n',
    'engine/physics/planted-page.ts': 'export const title = () => document.title;\n',
    'engine/physics/planted-node.ts': "export { readFileSync } from 'node:fs';\n",
  };
  let types: Outcome;

  beforeAll(() => {
    copy.plant(files);
    types = copy.npmRun('types');
    copy.remove(Object.keys(files));
  });

  test('with a failing exit code, and nothing but what was planted', () => {
    expect(types.code).not.toBe(0);
    const found = [...types.said.matchAll(/^(\S+)\(\d+,\d+\): error/gm)].map(([, file = '']) => file);
    expect(found.filter((file) => !(file in files))).toEqual([]);
  });

  test('engine importing workbook', () => {
    expect(types.said).toMatch(
      /engine\/physics\/planted-screen\.ts\(1,19\): error TS6307: File '.*workbook\/planted\.ts' is not listed/,
    );
  });

  test('document used in the engine', () => {
    expect(types.said).toMatch(/engine\/physics\/planted-page\.ts\(1,\d+\): error TS\d+: Cannot find name 'document'/);
  });

  test('a module of Node used in the engine', () => {
    expect(types.said).toMatch(/engine\/physics\/planted-node\.ts\(1,\d+\): error TS\d+: Cannot find .*'node:fs'/);
  });
});
