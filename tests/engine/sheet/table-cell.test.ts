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
      'rows: Rows shows the trial series “gird”: there is none of that name. The trial series are Grid. Did you mean Grid?',
    ],
    [{ series: '' }, 'rows: Rows has no trial series to show. The trial series are Grid.'],
    [
      { columns: ['aside.size'] },
      'rows: Rows shows the size of Aside, which Grid does not have. It has the a, the b, Bolt, the times of Sum, double, the geometric mean of Root.',
    ],
    [
      { groups: ['double'] },
      'rows: Rows makes groups by “double”, which is no axis of Grid. Its axes are the a, the b, Bolt, the times of Sum.',
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
    expect(tell[k]!(0, () => Number.NaN).message).toMatch(/3\u00a0g is a mass; here a length/);
  });
});
