import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Copy, copySources, type Outcome } from './copy';

const NO_SCREEN = 'engine/ knows no screen: it may not import workbook/.';
const PHYSICS = 'engine/physics/ computes with plain SI numbers: of the project it may import numerics/ only.';
const BLOCKS =
  'engine/blocks/ wires physics to fields: it may import physics/, numerics/, units/ and library/, never formula/, sheet/ or study/.';
const SHEET =
  'engine/sheet/ may import blocks/ and what stands below it, never study/, the worker or the command line.';
const DOOR = "workbook/ may import the engine's door engine/index only.";

/** File to plant → the import in it and the sentence that must refuse it. */
const FORBIDDEN: Readonly<Record<string, readonly [text: string, sentence: string]>> = {
  'engine/planted.ts': ["import { x } from '../workbook/planted';\n\nexport const y = x;\n", NO_SCREEN],
  'engine/sheet/planted-screen.ts': ["export { x } from '../../workbook/planted';\n", NO_SCREEN],
  'engine/physics/planted-screen.ts': [
    "import type { X } from '../../workbook/planted';\n\nexport type Y = X;\n",
    NO_SCREEN,
  ],
  'engine/physics/planted-blocks.ts': ["import { x } from '../blocks/planted';\n\nexport const y = x;\n", PHYSICS],
  'engine/physics/planted-type.ts': ["import type { X } from '../blocks/planted';\n\nexport type Y = X;\n", PHYSICS],
  'engine/physics/planted-index.ts': ["export { x } from '../blocks';\n", PHYSICS],
  'engine/physics/planted-sheet.ts': ["export const later = () => import('../sheet/planted');\n", PHYSICS],
  'engine/physics/planted-units.ts': ["export { x } from '../units/index';\n", PHYSICS],
  'engine/physics/deeper/planted.ts': ["export { x } from '../../blocks/planted';\n", PHYSICS],
  'engine/numerics/planted.ts': [
    "export { x } from '../physics/planted';\n",
    'engine/numerics/ stands at the bottom: it may import no other folder of the project.',
  ],
  'engine/units/planted.ts': [
    "export { x } from '../formula/planted';\n",
    'engine/units/ stands at the bottom: it may import no other folder of the project.',
  ],
  'engine/formula/planted.ts': [
    "export { x } from '../sheet/planted';\n",
    'engine/formula/ knows names and dimensions only: of the project it may import units/ only.',
  ],
  'engine/library/planted.ts': [
    "export { x } from '../blocks/planted';\n",
    'engine/library/ reads tables: of the project it may import units/ and numerics/ only.',
  ],
  'engine/blocks/planted-sheet.ts': ["export { x } from '../sheet/planted';\n", BLOCKS],
  'engine/blocks/planted-formula.ts': ["export { x } from '../formula/index';\n", BLOCKS],
  'engine/sheet/planted-study.ts': ["export { x } from '../study/planted';\n", SHEET],
  'engine/sheet/cells/planted.ts': ["export { x } from '../../study/planted';\n", SHEET],
  'engine/sheet/planted-worker.ts': ["export { x } from '../worker';\n", SHEET],
  'engine/study/planted.ts': [
    "export { x } from '../compute';\n",
    'engine/study/ may import sheet/ and what stands below it, never the worker or the command line.',
  ],
  'workbook/planted-deep.ts': ["export { x } from '../engine/physics/planted';\n", DOOR],
  'workbook/cells/planted.ts': ["export { x } from '../../engine/worker';\n", DOOR],
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

describe('without a planted fault', () => {
  test('lint takes the copy', () => {
    expect(copy.npmRun('lint')).toEqual({ code: 0, said: expect.any(String) });
  });
  test('the type check takes the copy', () => {
    expect(copy.npmRun('types')).toEqual({ code: 0, said: expect.not.stringContaining('error') });
  });
});

describe('lint refuses', () => {
  let lint: Outcome;
  /** What was said of one file. One line a finding. */
  const saidOf = (file: string) => lint.said.split('\n').filter((line) => line.includes(`/${file},line=`));

  beforeAll(() => {
    const files = { ...Object.fromEntries(Object.entries(FORBIDDEN).map(([file, [text]]) => [file, text])), ...CYCLE };
    copy.plant(files);
    lint = copy.npmRun('lint', '--reporter=github', '--max-diagnostics=none');
    copy.remove(Object.keys(files));
  });

  test('with a failing exit code', () => expect(lint.code).not.toBe(0));

  test.each(Object.entries(FORBIDDEN))('%s', (file, [, sentence]) => {
    expect(saidOf(file).join('\n')).toContain(`title=lint/style/noRestrictedImports,`);
    expect(saidOf(file).join('\n')).toContain(sentence);
  });

  test.each(Object.keys(CYCLE))('the import cycle through %s', (file) => {
    expect(saidOf(file).join('\n')).toContain('title=lint/suspicious/noImportCycles,');
    expect(saidOf(file).join('\n')).toContain('This import is part of a cycle.');
  });
});

describe('the type check refuses', () => {
  const refusal = (files: Readonly<Record<string, string>>) => {
    copy.plant(files);
    const outcome = copy.npmRun('types');
    copy.remove(Object.keys(files));
    return outcome;
  };

  test('engine importing workbook', () => {
    const { code, said } = refusal({
      'engine/physics/planted.ts': "import { x } from '../../workbook/planted';\n\nexport const y = x;\n",
      'workbook/planted.ts': 'export const x = 1;\n',
    });
    expect(code).not.toBe(0);
    expect(said).toMatch(
      /engine\/physics\/planted\.ts\(1,19\): error TS6307: File '.*workbook\/planted\.ts' is not listed/,
    );
  });

  test('document used in the engine', () => {
    const { code, said } = refusal({ 'engine/physics/planted.ts': 'export const title = () => document.title;\n' });
    expect(code).not.toBe(0);
    expect(said).toMatch(/engine\/physics\/planted\.ts\(1,\d+\): error TS\d+: Cannot find name 'document'/);
  });

  test('a module of Node used in the engine', () => {
    const { code, said } = refusal({ 'engine/physics/planted.ts': "export { readFileSync } from 'node:fs';\n" });
    expect(code).not.toBe(0);
    expect(said).toMatch(/engine\/physics\/planted\.ts\(1,\d+\): error TS\d+: Cannot find .*'node:fs'/);
  });
});
