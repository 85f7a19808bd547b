import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type CellKind, type Document, VERSION } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { cellsToSheets } from '../../../engine/sheet/migrations/from-2';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library as realLibrary } from '../../../engine/study/library';
import { library } from './small';

const folder = new URL('files/', import.meta.url);
const stored = (name: string): string => readFileSync(new URL(`${name}.tetherwright.json`, folder), 'utf8');
const files = readdirSync(folder)
  .filter((file) => file.startsWith('version-2-'))
  .map((file) => file.replace('.tetherwright.json', ''));

function opened(text: string): Document {
  const answer = openText(text);
  if (!answer.ok) throw new Error(answer.message);
  return answer.document;
}

describe('the way from version 3', () => {
  test('gives every flight its new places, a day that stood as its label, and columns names of their own', () => {
    const document = opened(stored('version-3-logs'));
    const blank = {
      ...{ flown_as: '', line_set: '', splits: '', all_laps: '', fuel_in: '', fuel_left: '' },
      ...{ propeller: '', needle: '', plug: '' },
    };
    expect(cellsOf(document)[0]).toMatchObject({
      columns: [{ name: 'span' }, { name: 'propeller_read', of: 'pitch' }],
      rows: [
        { ...blank, label: '', date: '2026-09-05', values: { span: '1 m', propeller_read: '6 in' }, note: 'calm' },
        { ...blank, label: 'Flight 2', date: '', values: {}, note: '' },
      ],
      line_sets: [],
      taken: [],
    });
    expect(faultsOfLive(openLive(document, library))).toEqual([]);
    expect(opened(serialise(document))).toEqual(document);
  });
});

describe('the way from version 2', () => {
  test.each(files)('loses nothing of %s', (name) => {
    const old = JSON.parse(stored(name));
    const document = opened(stored(name));
    expect(document.version).toBe(VERSION);
    const { cells, sheet: _, units, version: __, ...head } = old;
    expect(document).toMatchObject(head);
    expect(document.units).toBe(units === 'trade' ? 'inch_pound' : units);
    expect(
      cellsOf(document)
        .map((cell) => cell.id)
        .sort(),
    ).toEqual(cells.map((cell: { id: string }) => cell.id).sort());
    for (const cell of cells) {
      const { kind: ___, block, sweep, ...kept } = cell;
      const now = cellsOf(document).find((each) => each.id === cell.id);
      if (cell.kind !== 'tolerances' && name !== 'version-2-every-kind') expect(now).toMatchObject(kept);
      if (block !== undefined) expect(now).toMatchObject({ kind: 'model', of: block });
      if (sweep !== undefined) expect(now).toMatchObject({ series: sweep });
    }
    // Written and read again it stays as it is.
    expect(opened(serialise(document))).toEqual(document);
  });
  test('puts every kind on its sheet, called as a builder calls it, in the order that it had', () => {
    const { sheets } = opened(stored('version-2-every-kind'));
    const kinds = sheets.map(({ title, pieces }) => [title, ...pieces.map((piece): CellKind => piece.kind)]);
    expect(kinds).toEqual([
      [
        'Decide',
        'note',
        'variables',
        'choice',
        'formula',
        'trial_series',
        'chart',
        'tolerances',
        'what_helps',
        'table',
        'check',
        'log',
        'fit',
      ],
      ['Model', 'drawing', 'model', 'model', 'model'],
      ['Weights', 'parts'],
    ]);
    expect(sheets.map((sheet) => sheet.id)).toEqual(['s1', 's2', 's3']);
  });
  test('keeps what is typed, and a unit under its one spelling', () => {
    const document = opened(stored('version-2-every-kind'));
    expect(cellsOf(document).find((cell) => cell.name === 'set_these')).toMatchObject({
      folded: true,
      rows: [{ text: '-150 mm' }, { text: '21 g' }, { unit: 'dm²', text: '3 dm²' }],
    });
    expect(cellsOf(document).find((cell) => cell.name === 'shop')).toMatchObject({
      rows: [
        { of: 'tip_weight', distribution: 'normal', size: '1 g', above: '' },
        { of: 'engine_station', distribution: 'uniform', size: '2 mm', above: '1 mm' },
      ],
    });
    expect(document.baseline).toEqual({ tip_weight: '15 g' });
    expect(faultsOfLive(openLive(document, library))).toEqual([]);
  });
  test.each(['version-2-dab-15', 'version-2-marsh-harrier-35', 'version-2-quern-25-flying-day'])(
    'leaves %s without a fault',
    (name) => {
      expect(faultsOfLive(openLive(opened(stored(name)), realLibrary)).map(({ message }) => message)).toEqual([]);
    },
  );
  test('has the balance among the weights, and no sheet without pieces but the first', () => {
    const named = (of: string) => ({ kind: 'block', id: of, name: of, title: '', block: of, fields: {} });
    const migrated = cellsToSheets({ cells: [named('balance'), named('wing'), named('ballast')] });
    expect(migrated.sheets).toMatchObject([
      { title: 'Decide', pieces: [] },
      { title: 'Model', pieces: [{ of: 'wing' }] },
      { title: 'Weights', pieces: [{ of: 'balance' }, { of: 'ballast' }] },
    ]);
    expect(cellsToSheets({ cells: [] }).sheets).toEqual([{ id: 's1', title: 'Decide', pieces: [] }]);
  });
  test('keeps what is wrong, to be told', () => {
    const old = JSON.parse(stored('version-2-every-kind'));
    const problems = (file: object): string[] => {
      const answer = openText(JSON.stringify(file));
      return answer.ok ? [] : answer.problems.map((each) => each.message);
    };
    expect(problems({ ...old, cells: 3 })).toEqual(['sheets: expected a list, found 3.']);
    expect(
      problems({ ...old, cells: [{ kind: 'tolerances', id: 'c', name: 's', title: '', rows: 'all' }, 'chart'] }),
    ).toContain('sheets[0].pieces[1]: expected a group of named values, found "chart".');
    expect(problems({ ...old, units: 'yards' })).toEqual(['units: expected "metric" or "inch_pound", found "yards".']);
  });
});
