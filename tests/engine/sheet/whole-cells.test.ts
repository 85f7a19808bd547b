import { describe, expect, test } from 'vitest';
import { copyOfCell } from '../../../engine/sheet/copy';
import type { Cell, Document } from '../../../engine/sheet/document';
import { keptLinks } from '../../../engine/sheet/links';
import { openLive } from '../../../engine/sheet/live';
import { retitleCell } from '../../../engine/sheet/retitle';
import { faultsOf } from '../../../engine/sheet/sentences';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChange, applyChanges } from '../../../engine/sheet/transaction';
import { onOneSheet } from './one-sheet';
import { blockOf, documentOf, formula, library, smallDesign, variable, variables } from './small';

const linksOf = library.blocks.map(({ kind, role = kind, fields }) => ({
  kind,
  role,
  fields: Object.entries(fields).map(([name, field]) =>
    'link' in field ? { name, kind: 'link', role: field.link } : { name, kind: 'quantity' },
  ),
}));
const cellOf = (document: Document, name: string): Cell => cellsOf(document).find((cell) => cell.name === name)!;
const faults = (document: Document): string[] => {
  const { compiled, state } = openLive(document, library);
  return faultsOf(compiled, state).map((fault) => fault.message);
};

describe('a copy', () => {
  test('has an id and free names, and says of itself what the original says of itself', () => {
    const document = documentOf([
      variables('set', variable('span', 'mm', '1000'), variable('half', 'mm', 'span / 2', '0', 'span')),
      formula('sums', { area: 'span * 100 mm', twice: '2 * area' }),
    ]);
    const copied = copyOfCell(document, cellOf(document, 'set'));
    expect(copied).toMatchObject({ id: 'c01', name: 'set_2', title: 'set, copy' });
    expect(copied.kind === 'variables' && copied.rows.map(({ name, text, high }) => [name, text, high])).toEqual([
      ['span_2', '1000', ''],
      ['half_2', 'span_2 / 2', 'span_2'],
    ]);
    const lines = copyOfCell(document, cellOf(document, 'sums'));
    expect(lines.kind === 'formula' && lines.lines.map(({ name, text }) => [name, text])).toEqual([
      ['area_2', 'span * 100 mm'],
      ['twice_2', '2 * area_2'],
    ]);
  });

  test('of a choice keeps the names of its options, of a table the names of its parts', () => {
    const document = smallDesign();
    const stock = copyOfCell(document, cellOf(document, 'tail_stock'));
    expect(stock).toEqual({
      ...cellOf(document, 'tail_stock'),
      id: 'c01',
      name: 'tail_stock_2',
      title: 'Tail stock, copy',
    });
    const table = copyOfCell(document, cellOf(document, 'parts'));
    expect(table).toMatchObject({ name: 'parts_2', rows: (cellOf(document, 'parts') as { rows?: unknown }).rows });
  });
});

describe('a second block of a role', () => {
  test('leaves those that take from the first where they were', () => {
    const document = smallDesign();
    const second = blockOf('cord', {}, 'thin_cord');
    const changes = keptLinks(document, second, linksOf);
    expect(changes).toEqual([{ change: 'cell', cell: { ...cellOf(document, 'lap'), fields: { cord: 'cord' } } }]);
    const with2 = applyChanges(document, [...changes, { change: 'insert', sheet: 's1', at: 0, cell: second }]).document;
    expect(faults(with2)).toEqual([]);
    expect(faults(applyChange(document, { change: 'insert', sheet: 's1', at: 0, cell: second }).document)[0]).toMatch(
      'lap needs a cord, and the design has 2: thin_cord, cord. Remove all but one, or pick the one that is meant.',
    );
  });
  test('is nothing to write where there is none yet, or where it is said already', () => {
    expect(keptLinks(documentOf([blockOf('lap')]), blockOf('cord'), linksOf)).toEqual([]);
    const said = documentOf([blockOf('cord'), blockOf('lap', { cord: 'cord' })]);
    expect(keptLinks(said, blockOf('cord', {}, 'other'), linksOf)).toEqual([]);
    expect(keptLinks(said, formula('sums', {}), linksOf)).toEqual([]);
  });
  test('counts a table of parts as one of the role of parts', () => {
    const document = smallDesign();
    const changes = keptLinks(document, copyOfCell(document, cellOf(document, 'parts')), linksOf);
    expect(changes).toEqual([{ change: 'cell', cell: { ...cellOf(document, 'lap'), fields: { parts: 'parts' } } }]);
  });
});

describe('a new title', () => {
  const retitled = (document: Document, id: string, title: string): Document =>
    applyChanges(document, retitleCell(document, id, title)).document;
  const document = documentOf([
    { ...variables('tail_weights', variable('a', 'g', '2')), title: 'Tail weights' },
    { ...(cellsOf(smallDesign())[2] as Cell), name: 'tail_stock', title: 'Tail stock' },
    { ...blockOf('cord'), title: 'Cord' },
    formula('sums', { light: 'tail_stock.areal_mass', a_2: '1' }),
    { ...formula('figures', {}), title: 'Figures of the tail' },
  ]);
  test('takes the name along that came from the old one, and the formulas', () => {
    const after = retitled(document, 'id_tail_stock', 'Stock of the tail');
    expect(cellsOf(after)[1]).toMatchObject({ name: 'stock_of_the_tail', title: 'Stock of the tail' });
    expect(cellsOf(after)[3]).toMatchObject({ lines: [{ text: 'stock_of_the_tail.areal_mass' }, { text: '1' }] });
  });
  test('leaves a name alone that was chosen, and those of blocks', () => {
    expect(cellsOf(retitled(document, 'id_figures', 'All figures'))[4]).toMatchObject({
      name: 'figures',
      title: 'All figures',
    });
    expect(cellsOf(retitled(document, 'id_cord', 'Thin cord'))[2]).toMatchObject({ name: 'cord', title: 'Thin cord' });
  });
  test('gets a name that is free, and the same one where nothing else has it', () => {
    expect(cellsOf(retitled(document, 'id_tail_weights', 'Sums'))[0]).toMatchObject({ name: 'sums_2' });
    expect(cellsOf(retitled(document, 'id_tail_weights', 'Tail weights'))[0]).toMatchObject({ name: 'tail_weights' });
    expect(retitleCell(document, 'nowhere', 'x')).toEqual([]);
  });
});

test('folding is an edit that is taken back to the letter', () => {
  const document = smallDesign();
  for (const start of [
    document,
    { ...document, sheets: onOneSheet(cellsOf(document).map((cell) => ({ ...cell, folded: false }))) },
  ]) {
    const { document: folded, inverse } = applyChange(start, { change: 'fold', id: 'id_words', folded: true });
    expect(cellsOf(folded)[0]!.folded).toBe(true);
    expect(applyChange(folded, inverse).document).toStrictEqual(start);
  }
});
