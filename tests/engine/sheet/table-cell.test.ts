import { describe, expect, it } from 'vitest';
import { withText } from '../../../engine/sheet/baseline';
import { compile } from '../../../engine/sheet/compile';
import type { Document, TableCell } from '../../../engine/sheet/document';
import { textsOf } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { library, slideRule } from '../study/slide-rule';
import { onOneSheet } from './one-sheet';

const table: TableCell = {
  kind: 'table',
  id: '8',
  name: 'rows',
  title: 'Rows',
  series: 'grid',
  columns: ['a', 'double'],
  keep: [
    { of: 'double', low: '2 × a', high: '' },
    { of: 'bolt', low: '', high: '', options: ['short'] },
  ],
  rows: 'all',
  reason: '',
  groups: ['bolt'],
  measures: ['mean'],
  sort: 'double mean',
  descending: true,
};
const sheet = (change: Partial<TableCell> = {}): Document => {
  const document = slideRule();
  return { ...document, sheets: onOneSheet([...cellsOf(document), { ...table, ...change }]) };
};
const faults = (change: Partial<TableCell>): string[] =>
  compile(sheet(change), library).faults.map((fault) => `${fault.path}: ${fault.message}`);
const tableIn = (document: Document): TableCell =>
  cellsOf(document).find((cell): cell is TableCell => cell.kind === 'table')!;

function renamed(path: string, to: string): TableCell {
  const renaming = rename(sheet(), path, to);
  if (!renaming.ok) throw new Error(renaming.message);
  return tableIn(applyChanges(sheet(), renaming.changes).document);
}

describe('a table cell', () => {
  it('has the limits of its rows as texts', () => {
    const document = sheet();
    expect(textsOf(document).filter(({ path }) => path.startsWith('rows'))).toEqual([
      { path: 'rows.keep1.low', text: '2 × a' },
      { path: 'rows.keep1.high', text: '' },
      { path: 'rows.keep2.low', text: '' },
      { path: 'rows.keep2.high', text: '' },
    ]);
    expect(tableIn(withText(document, 'rows.keep1.high', '90 mm')!).keep[0]).toEqual({
      of: 'double',
      low: '2 × a',
      high: '90 mm',
    });
  });

  it('is without fault as it stands, and its limits are computed', () => {
    expect(faults({})).toEqual([]);
    expect(faults({ columns: [], groups: [], sort: '' })).toEqual([]);
  });

  it('follows what is renamed', () => {
    expect(renamed('a', 'side')).toMatchObject({
      columns: ['side', 'double'],
      keep: [{ of: 'double', low: '2 × side' }, { of: 'bolt' }],
    });
    expect(renamed('double', 'twice_it')).toMatchObject({ columns: ['a', 'twice_it'], sort: 'twice_it mean' });
    expect(renamed('grid', 'many').series).toBe('many');
  });

  it.each([
    [
      { series: 'gird' },
      'rows: rows shows the sweep "gird": there is none of that name. The sweeps are grid. Did you mean grid?',
    ],
    [{ series: '' }, 'rows: rows has no sweep to show. The sweeps are grid.'],
    [
      { columns: ['aside.size'] },
      'rows: rows shows "aside.size", which grid does not have. It has a, b, bolt, sum.times, double, root.mean.',
    ],
    [
      { groups: ['double'] },
      'rows: rows makes groups by "double", which is no axis of grid. Its axes are a, b, bolt, sum.times.',
    ],
  ] as [Partial<TableCell>, string][])('says what it asks in vain: %j', (change, message) =>
    expect(faults(change)).toEqual([message]),
  );

  it('refuses a limit of another dimension', () => {
    const {
      faults: found,
      tell,
      program,
    } = compile(sheet({ keep: [{ of: 'double', low: '3 g', high: '' }] }), library);
    expect(found).toEqual([]);
    const k = program.steps.findIndex((step) => step.path === 'rows.keep1.low');
    expect(tell[k]!(0, () => Number.NaN).message).toMatch(/3 g is a mass; here a length/);
  });
});
