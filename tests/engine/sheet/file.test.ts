import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BlockCell, Document } from '../../../engine/sheet/document';
import { VERSION } from '../../../engine/sheet/document';
import { LARGEST_FILE, type Opened, openText, type Reads, serialise, tooLarge } from '../../../engine/sheet/file';
import { jsonFault } from '../../../engine/sheet/json-fault';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { bringUp, migrations } from '../../../engine/sheet/migrations/index';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { randomEdit } from './edits';
import { onOneSheet } from './one-sheet';
import { randomFrom } from './random';
import { library, smallDesign } from './small';

const design: Document = {
  ...smallDesign(),
  rows: [{ table: 'materials', name: 'foam', title: 'Foam', source: 'weighed', values: { density: '30 kg/m³' } }],
  figures: ['parts.x'],
  baseline: { tip_weight: '12 g', 'parts.fin.weighed': '' },
};

const messageOf = (opened: Opened): string => (opened.ok ? 'opened' : opened.message);
const problemsOf = (opened: Opened): string[] => (opened.ok ? [] : opened.problems.map((each) => each.message));

/** Opens the design after its plain data have been tampered with. */
// biome-ignore lint/suspicious/noExplicitAny: the point is to write what no document may hold.
function openWith(tamper: (file: any) => void): Opened {
  const file = JSON.parse(serialise(design));
  tamper(file);
  return openText(JSON.stringify(file));
}

describe('a document goes to its file and back', () => {
  test('unchanged', () => expect(openText(serialise(design))).toEqual({ ok: true, document: design }));
  for (const seed of [21, 22, 23]) {
    test(`after twenty random edits (seed ${seed})`, () => {
      const random = randomFrom(seed);
      let document = design;
      for (let k = 0; k < 20; k++) ({ document } = applyChanges(document, randomEdit(document, random).changes));
      const text = serialise(document);
      expect(openText(text)).toEqual({ ok: true, document });
      expect(serialise((openText(text) as { document: Document }).document)).toBe(text);
    });
  }
  test('in one order, whatever the order in memory', () => {
    const { sheets, title, ...rest } = design;
    const pieces = cellsOf(design).map((cell) => Object.fromEntries(Object.entries(cell).reverse()));
    const other = { sheets: [{ pieces, title: sheets[0]!.title, id: 's1' }], ...rest, title } as unknown as Document;
    expect(serialise(other)).toBe(serialise(design));
    expect(serialise(design).split('\n').slice(0, 6)).toEqual([
      '{',
      '  "format": "tetherwright",',
      '  "version": 4,',
      '  "title": "Small",',
      '  "drawn": "",',
      '  "date": "2026-01-01",',
    ]);
    expect(serialise(design).endsWith('\n}\n')).toBe(true);
  });
  test('without texts that say nothing', () => {
    const cells = cellsOf(design).map((cell) =>
      cell.kind === 'model' ? { ...cell, fields: { ...cell.fields, zzz: '' } } : cell,
    );
    expect(serialise({ ...design, sheets: onOneSheet(cells) })).toBe(serialise(design));
    const opened = openWith((file) => {
      file.sheets[0].pieces.find((cell: { kind: string }) => cell.kind === 'model').fields.zzz = '';
    });
    expect(opened).toEqual({ ok: true, document: design });
  });
});

describe('a file is refused', () => {
  test('that is broken, with line and column', () => {
    const text = serialise(design).replace('"version": 4,', '"version" 3,');
    expect(messageOf(openText(text))).toBe(
      'This file is broken at line 3, column 13: expected a colon, found 3,. Nothing was opened.',
    );
    expect(messageOf(openText(serialise(design).slice(0, 200)))).toMatch(
      /^This file is broken at line \d+, column \d+: expected .+, found .+\. Nothing was opened\.$/,
    );
    expect(messageOf(openText(''))).toBe(
      'This file is broken at line 1, column 1: expected a value, found the end of the file. Nothing was opened.',
    );
  });
  test('that nests deeper than a design, however deep', () => {
    const [before, after] = serialise(design).split('"drawn": ""') as [string, string];
    for (const levels of [250, 1500, 2500, 4000, 100_000]) {
      const lists = `${before}"drawn": ${'['.repeat(levels)}${']'.repeat(levels)}${after}`;
      expect(messageOf(openText(lists)), `${levels} lists`).toBe(
        'This file is broken at line 5, column 212: expected at most 200 levels, found [[[[[[[[[[[[…. Nothing was opened.',
      );
      const groups = `${before}"drawn": ${'{"a":'.repeat(levels)}1${'}'.repeat(levels)}${after}`;
      expect(messageOf(openText(groups)), `${levels} groups`).toBe(
        'This file is broken at line 5, column 1012: expected at most 200 levels, found {"a":{"a":{"…. Nothing was opened.',
      );
    }
  });
  test('that is something else', () => {
    for (const text of ['{"format": "other"}', '{}', '[]', 'null', '3', '"tetherwright"']) {
      expect(messageOf(openText(text)), text).toBe('This file is not a Tetherwright design. Nothing was opened.');
    }
    expect(problemsOf(openText('{"format": "other"}'))).toEqual(['format: expected "tetherwright", found "other".']);
  });
  test('that is newer', () => {
    const opened = openWith((file) => {
      file.version = 7;
      file.sheets = 'of a kind that nobody knows yet';
    });
    expect(messageOf(opened)).toBe(
      'This file was written by a newer Tetherwright (version 7; this one reads up to 4). Nothing was opened. Load the newest Tetherwright and open the file there.',
    );
  });
  test('of no version', () => {
    for (const version of [0, -1, 1.5, '1', null, undefined]) {
      const opened = openWith((file) => {
        file.version = version;
      });
      expect(messageOf(opened)).toBe(
        `This file cannot be opened. One thing in it is not as it should be: version: expected a whole number of 1 or more, found ${version === undefined ? 'nothing' : JSON.stringify(version)}. Nothing was opened.`,
      );
    }
  });
  test('with each place, what was expected and what was found', () => {
    const opened = openWith((file) => {
      file.title = 3;
      file.units = 'inches';
      file.sheets[0].pieces[0].id = '';
      file.sheets[0].pieces[1].rows[0].unit = null;
      file.sheets[0].pieces[1].rows[1].colour = 'red';
      file.sheets[0].pieces[2].options[0].pattern = 'tartan';
      file.sheets[0].pieces[4].fields = ['station'];
      delete file.sheets[0].pieces[6].rows[2].shape;
      file.sheets[0].pieces[10].axes[1].count = 2.5;
      file.sheets[0].pieces[11].kind = 'painting';
      file.rows = {};
      file.figures[0] = true;
    });
    expect(problemsOf(opened)).toEqual([
      'title: expected a text, found 3.',
      'units: expected "metric" or "inch_pound", found "inches".',
      'sheets[0].pieces[0].id: expected a text that is not blank, found "".',
      'sheets[0].pieces[1].rows[0].unit: expected a unit such as mm, g or m/s, or nothing between the quotes for a plain number, found null.',
      'sheets[0].pieces[1].rows[1].colour: expected nothing of that name, found "red".',
      'sheets[0].pieces[2].options[0].pattern: expected "grain" or "ply" or "faced" or "foam" or "weave" or "plain", found "tartan".',
      'sheets[0].pieces[4].fields: expected a group of named values, found a list.',
      'sheets[0].pieces[6].rows[2].shape: expected a value, found nothing.',
      'sheets[0].pieces[10].axes[1].count: expected a whole number, found 2.5.',
      'sheets[0].pieces[11].kind: expected "note" or "variables" or "choice" or "formula" or "model" or "parts" or "drawing" or "trial_series" or "tolerances" or "what_helps" or "chart" or "table" or "check" or "log" or "fit" or "variants" or "what_mends" or "best_compromises" or "weighing" or "guess", found "painting".',
      'rows: expected a list, found a group of named values.',
      'figures[0]: expected a text, found true.',
    ]);
    expect(messageOf(opened)).toBe(
      'This file cannot be opened. 12 things in it are not as it should be: title: expected a text, found 3. Nothing was opened.',
    );
  });
  test('with a name that the program keeps for itself', () => {
    const opened = openWith((file) => {
      file.toString = 'a text';
      file.sheets[0].pieces[4].fields.constructor = '3 mm';
      file.baseline = JSON.parse('{ "__proto__": "3 mm" }');
    });
    expect(problemsOf(opened)).toEqual([
      'sheets[0].pieces[4].fields.constructor: expected a name that the program does not keep for itself, found "constructor".',
      'baseline.__proto__: expected a name that the program does not keep for itself, found "__proto__".',
      'toString: expected a name that the program does not keep for itself, found "toString".',
    ]);
  });
  test('that is too large, before it is read', () => {
    expect(tooLarge(LARGEST_FILE)).toBeUndefined();
    const message =
      'This file is too large: 6.3 MB, and at most 5 MB are read. Nothing was opened. A design has far less; look whether it is the right file.';
    expect(tooLarge(6_234_567)).toEqual({
      ok: false,
      message,
      problems: [{ path: '', expected: 'at most 5 MB', found: '6.3 MB', message }],
    });
    expect(messageOf(openText(' '.repeat(6_234_567)))).toBe(message);
  });
  test('with a unit that is none, wherever a unit is named', () => {
    const opened = openWith((file) => {
      const [, variables, choice] = file.sheets[0].pieces;
      variables.rows[1].unit = 'furlong';
      choice.columns = [{ name: 'weight', unit: 'stones', title: '' }];
      file.sheets[0].pieces[8].lines[0].unit = 'm^2';
    });
    const allowed = 'expected a unit such as mm, g or m/s, or nothing between the quotes for a plain number';
    expect(problemsOf(opened)).toEqual([
      `sheets[0].pieces[1].rows[1].unit: ${allowed}, found "furlong".`,
      `sheets[0].pieces[2].columns[0].unit: ${allowed}, found "stones".`,
      `sheets[0].pieces[8].lines[0].unit: ${allowed}, found "m^2".`,
    ]);
    expect(messageOf(opened)).toBe(
      `This file cannot be opened. 3 things in it are not as it should be: sheets[0].pieces[1].rows[1].unit: ${allowed}, found "furlong". Nothing was opened.`,
    );
  });
  test('without a sheet', () => {
    const opened = openWith((file) => {
      file.sheets = [];
    });
    expect(problemsOf(opened)).toEqual(['sheets: expected a list of at least one, found a list.']);
  });
});

test('an id that stands twice stays with the first; later ones get their own, and nothing else changes', () => {
  const twice = (opened: Opened): string[] =>
    opened.ok ? opened.document.sheets.flatMap((sheet) => [sheet.id, ...sheet.pieces.map((piece) => piece.id)]) : [];
  const opened = openWith((file) => {
    const [sheet] = file.sheets;
    file.sheets = [
      { ...sheet, pieces: sheet.pieces.slice(0, 3) },
      {
        ...sheet,
        pieces: [
          { ...sheet.pieces[3], id: 'id_set_these' },
          { ...sheet.pieces[4], id: 'c1' },
        ],
      },
    ];
  });
  expect(twice(opened)).toEqual(['s1', 'id_words', 'id_set_these', 'id_tail_stock', 's2', 'c2', 'c1']);
  expect(opened.ok && opened.document.sheets[1]!.pieces[0]).toMatchObject({ ...cellsOf(design)[3], id: 'c2' });
});

test('a mark for the order of bytes at the beginning is passed over', () => {
  expect(openText(`\uFEFF${serialise(design)}`).ok).toBe(true);
});

describe('where a text stops being JSON', () => {
  const cases: readonly (readonly [text: string, line: number, column: number, expected: string, found: string])[] = [
    ['{"a": 1,}', 1, 9, 'a name in double quotes', '}'],
    ['{"a": 1\n "b": 2}', 2, 2, 'a comma or }', '"b": 2}'],
    ['[1, 2\n\n', 3, 1, 'a comma or ]', 'the end of the file'],
    ["{'a': 1}", 1, 2, 'a name in double quotes', "'a': 1}"],
    ['{"a": tru}', 1, 7, 'a value', 'tru}'],
    ['{"a": "b\n"}', 1, 7, 'a value', '"b'],
    ['[01]', 1, 3, 'a comma or ]', '1]'],
    ['{} {}', 1, 4, 'the end of the file', '{}'],
    ['[1, 2, three hundred and four]', 1, 8, 'a value', 'three hundre…'],
    ['['.repeat(300), 1, 202, 'at most 200 levels', '[[[[[[[[[[[[…'],
  ];
  for (const [text, line, column, expected, found] of cases) {
    test(JSON.stringify(text.slice(0, 30)), () => expect(jsonFault(text)).toEqual({ line, column, expected, found }));
  }
  test('is found for just the texts that JSON.parse refuses (seed 31)', () => {
    const json = fc.json({ maxDepth: 4 });
    const spoiled = fc
      .tuple(
        json,
        fc.nat(),
        fc.constantFrom('', '"', '{', '}', '[', ']', ',', ':', '\\', '0', '-', 'e', '.', 't', '\n', ' ', '\u0001'),
      )
      .map(([text, at, put]) => text.slice(0, at % (text.length + 1)) + put + text.slice((at % (text.length + 1)) + 1));
    const parses = (text: string): boolean => {
      try {
        JSON.parse(text);
        return true;
      } catch {
        return false;
      }
    };
    fc.assert(
      fc.property(fc.oneof(json, spoiled), (text) => (jsonFault(text) === undefined) === parses(text)),
      { seed: 31, numRuns: 3000 },
    );
  });
});

describe('the way up from old versions', () => {
  /** Versions 1 and 2 that never were: 2 has a key called "heading" instead of "title", 3 has "title" again and a figure. */
  const reads: Reads = {
    version: 3,
    migrations: [
      { from: 1, migrate: ({ title, ...file }) => ({ ...file, heading: `${title}, brought up` }) },
      { from: 2, migrate: ({ heading, ...file }) => ({ ...file, title: heading, figures: ['parts.mass'] }) },
    ],
  };
  test('is taken step by step', () => {
    const opened = openText(JSON.stringify({ ...design, version: 1 }), reads);
    expect(opened).toEqual({
      ok: true,
      document: { ...design, version: 3, title: 'Small, brought up', figures: ['parts.mass'] },
    });
  });
  test('is taken from the middle', () => {
    const { title: _, ...file } = design;
    const opened = openText(JSON.stringify({ ...file, version: 2, heading: 'Second' }), reads);
    expect(opened).toMatchObject({ ok: true, document: { version: 3, title: 'Second' } });
  });
  test('ends at the version that this build reads', () => {
    expect(messageOf(openText(JSON.stringify({ ...design, version: 4 }), reads))).toMatch(
      /version 4; this one reads up to 3/,
    );
  });
  test('from version 1 gives own materials a table, and a source where none was said', () => {
    const stored = readFileSync(new URL('files/version-1.tetherwright.json', import.meta.url), 'utf8');
    const opened = openText(stored);
    if (!opened.ok) throw new Error(opened.message);
    expect(opened.document.version).toBe(VERSION);
    expect(opened.document.rows).toEqual([
      {
        table: 'materials',
        name: 'plank',
        title: 'Plank, weighed',
        source: 'scale and ruler',
        values: { density: '142 kg/m³', modulus: '2.7 GPa' },
      },
      { table: 'materials', name: 'foam', title: 'Foam', source: 'not said', values: { density: '30 kg/m³' } },
    ]);
    const live = openLive(opened.document, library);
    expect(faultsOfLive(live)).toEqual([]);
    expect(live.state.m[live.compiled.program.slotOf.get('parts.mass')!]).toBeCloseTo(0.0142 + 0.03, 12);
  });
  test('from version 2 turns the factors for model size into factors for roughness, and what names them', () => {
    const stored = readFileSync(new URL('files/version-2.tetherwright.json', import.meta.url), 'utf8');
    const opened = openText(stored);
    if (!opened.ok) throw new Error(opened.message);
    expect(opened.document.version).toBe(VERSION);
    const wing = cellsOf(opened.document).find((cell) => cell.name === 'wing') as BlockCell;
    expect(wing.fields).toEqual({
      root_chord: '230 mm',
      roughness_factor: '(2) / 1.36',
      roughness_lift_factor: '(half) / 0.62',
    });
    expect(opened.document.figures).toEqual(['rough_drag']);
    expect(opened.document.baseline).toEqual({ 'wing.roughness_factor': '1.5' });
    expect(JSON.stringify(opened.document)).toContain('wing.roughness_factor * 2');
  });
  test('from version 1 keeps what is wrong, to be told', () => {
    const file = JSON.parse(readFileSync(new URL('files/version-1.tetherwright.json', import.meta.url), 'utf8'));
    expect(problemsOf(openText(JSON.stringify({ ...file, materials: 3 })))).toEqual([
      'rows: expected a list, found 3.',
    ]);
    const spoilt = [{ ...file.materials[0], colour: 'red' }, 'foam'];
    expect(problemsOf(openText(JSON.stringify({ ...file, materials: spoilt })))).toEqual([
      'rows[0].colour: expected nothing of that name, found "red".',
      'rows[1]: expected a group of named values, found "foam".',
    ]);
  });
  test('has no gap', () => {
    expect(migrations.map((migration) => migration.from)).toEqual(Array.from({ length: VERSION - 1 }, (_, k) => k + 1));
    expect(() => bringUp({}, 1, 3, [reads.migrations[0]!])).toThrow(
      new RangeError('No migration takes a file of version 2; each version up to 3 needs one'),
    );
  });
});
