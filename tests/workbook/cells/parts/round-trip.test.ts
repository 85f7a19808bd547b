import { expect, test } from 'vitest';
import type { Document, Part, PartsCell } from '../../../../engine/sheet/document';
import { type Live, numberAt, openLive } from '../../../../engine/sheet/live';
import { cellsOf, withPiece } from '../../../../engine/sheet/sheets';
import { applyChanges } from '../../../../engine/sheet/transaction';
import { weighingPart } from '../../../../engine/sheet/weighed-as';
import { addingParts } from '../../../../workbook/cells/parts/edits';
import { columnFaults, proposedColumns } from '../../../../workbook/cells/parts/paste/columns';
import { readParts } from '../../../../workbook/cells/parts/paste/read-parts';
import { partsCsv } from '../../../../workbook/cells/parts/table-csv';
import { library, part, smallDesign } from '../../../engine/sheet/small';

const named = (name: string) => ({ name, title: name });
const KNOWN = {
  material: ['hard_wood', 'soft_wood'].map(named),
  stack: ['tail_stock'].map(named),
  wire: [],
};
const tableIn = (document: Document): PartsCell =>
  cellsOf(document).find((cell): cell is PartsCell => cell.kind === 'parts')!;
const csvOf = (live: Live): string =>
  partsCsv(tableIn(live.compiled.document), {
    name: (path) => live.compiled.names.find((info) => info.path === path),
    value: (path) => numberAt(live, path),
  });

/** Parts of several shapes, some of them several, coated, weighed, weighed otherwise than they are now, or said by a formula. */
function manyParts(): Document {
  const small = smallDesign();
  const table = tableIn(small);
  const rows: Part[] = [
    ...table.rows,
    part('screws', 'point', { mass: '1.2 g', count: '4', x: '-90' }),
    part('strip', 'strip', { length: '1/3 m', width: '6 mm', thickness: '3 mm', material: 'soft_wood', x: '0.1 in' }),
    part('cap', 'point', { mass: 'tip_weight ÷ 7', x: '12 mm', coats_area: '20 cm²', coat: '31 g/m²' }),
    part('ribs', 'ribs', {
      ...{ chord: '200', tip_chord: '150', section_thickness: '15 %', thickness: '2', cut_away: '30 %' },
      ...{ material: 'soft_wood', count: '12', x: '80', y: '5', z: '-1', mass_tolerance: '0.5 g' },
    }),
  ];
  const weighing = (document: Document, path: string, text: string): Document => {
    const live = openLive(document, library);
    return applyChanges(document, weighingPart(document, path, text, (of) => numberAt(live, of))!).document;
  };
  const weighed = weighing(
    weighing(withPiece(small, { ...table, rows }), 'parts.fin.weighed', '13.37 g'),
    'parts.stab.weighed',
    '1/2 oz',
  );
  const again = tableIn(weighed).rows.map((row) =>
    row.name === 'fin' ? { ...row, fields: { ...row.fields, thickness: '4 mm' } } : row,
  );
  return withPiece(weighed, { ...tableIn(weighed), rows: again });
}

test('a saved table is taken in again with every shape, quantity, size and weighing, to the last bit', () => {
  const before = openLive(manyParts(), library);
  const csv = csvOf(before);
  const emptied = withPiece(manyParts(), { ...tableIn(manyParts()), rows: [] });
  const heading = /^.*/.exec(csv)![0];
  const columns = proposedColumns(
    [...heading.matchAll(/"([^"]*)"|([^,]+)/g)].map(([, quoted, plain]) => quoted ?? plain!),
    'metric',
  );
  expect(columnFaults(columns)).toEqual([]);
  expect(columns.filter(({ to }) => to === '').map(({ head }) => head)).toEqual([
    'mass that counts, g',
    'estimate, g',
    'share of the moment, %',
  ]);
  const read = readParts(csv, ',', columns, { decimal: '.', units: 'metric', known: KNOWN }, new Set());
  expect(read.faults).toEqual([]);
  const after = openLive(applyChanges(emptied, addingParts(emptied, tableIn(emptied), read.parts)).document, library);
  const rows = tableIn(before.compiled.document).rows;
  const rest = ({ name, title, shape, fuel, weighed_as }: Part) => ({ name, title, shape, fuel, weighed_as });
  expect(tableIn(after.compiled.document).rows.map(rest)).toEqual(rows.map(rest));
  for (const { name } of rows) {
    for (const number of ['estimate', 'difference', 'x', 'y', 'z', 'weighed', 'count']) {
      const path = `parts.${name}.${number}`;
      expect(numberAt(after, path), path).toBe(numberAt(before, path));
    }
  }
  for (const sum of ['mass', 'x', 'y', 'z', 'mass_sd']) {
    expect(numberAt(after, `parts.${sum}`), sum).toBe(numberAt(before, `parts.${sum}`));
  }
  // Saved again it is the same file.
  expect(csvOf(after)).toBe(csv);
});
