import { describe, expect, test } from 'vitest';
import {
  applyChanges,
  cellsOf,
  type Document,
  PART_SHAPES,
  type Part,
  type PartsCell,
  partFields,
  textAt,
} from '../../../../engine/index';
import {
  addingPart,
  addingParts,
  changePart,
  copyOf,
  massOfRow,
  movePart,
  newPart,
  reshaped,
  retitle,
  withFuel,
  withoutPart,
  withPart,
} from '../../../../workbook/cells/parts/edits';
import { onOneSheet } from '../../../engine/sheet/one-sheet';
import { smallSheet } from '../../store/small-sheet';

const part = (name: string, title: string, fields: Record<string, string> = { mass: '5 g', x: '10 mm' }): Part => ({
  name,
  title,
  shape: 'point',
  fields,
});
const table: PartsCell = {
  kind: 'parts',
  id: 'c9',
  name: 'parts',
  title: 'Weight and balance',
  fuel: '',
  rows: [part('engine', 'Engine'), part('horn', 'Horn'), part('fin', 'Fin')],
};
const taken = (cell: PartsCell): ReadonlySet<string> => new Set([...cell.rows.map((row) => row.name), 'mass', 'x']);
const names = (cell: PartsCell): string[] => cell.rows.map((row) => row.name);

describe('the rows of a table', () => {
  test('a part is put in after the open one, or at the end', () => {
    const added = newPart(taken(table));
    expect(names(withPart(table, added, 'engine'))).toEqual(['engine', 'new_part', 'horn', 'fin']);
    expect(names(withPart(table, added))).toEqual(['engine', 'horn', 'fin', 'new_part']);
    expect(withoutPart(withPart(table, added, 'horn'), 'new_part')).toEqual(table);
  });

  test('a new part weighs nothing and has a name that is free', () => {
    const one = newPart(taken(table));
    const both = withPart(table, one);
    expect(one).toEqual(part('new_part', 'New part', { mass: '0 g', x: '0 mm' }));
    expect(newPart(taken(both)).name).toBe('new_part_2');
    expect(newPart(taken(withPart(both, newPart(taken(both))))).name).toBe('new_part_3');
  });

  test('a copy says the same under a name of its own', () => {
    const copy = copyOf(table.rows[1]!, taken(table));
    expect(copy).toEqual({ ...table.rows[1], name: 'horn_2', title: 'Horn, copy' });
    expect(copyOf(copy, taken(withPart(table, copy))).name).toBe('horn_3');
  });

  test('a part that is added weighs nothing in the baseline, and keeps what the scale says of it', () => {
    const document: Document = { ...smallSheet, sheets: onOneSheet([table]), baseline: {} };
    for (const weighed of ['', '4 g']) {
      const added = part('clevis', 'Clevis', { mass: '3 g', x: '450 mm', ...(weighed && { weighed }) });
      const edited = applyChanges(document, addingPart(table, added, 'horn'));
      const [cell] = cellsOf(edited.document) as [PartsCell];
      expect(names(cell)).toEqual(['engine', 'horn', 'clevis', 'fin']);
      expect(textAt(edited.document, 'parts.clevis.weighed')).toBe(weighed);
      expect(edited.document.baseline).toEqual({ 'parts.clevis.weighed': '0 g' });
      expect(cellsOf(applyChanges(edited.document, edited.inverse).document)).toEqual(cellsOf(document));
    }
  });

  test('a part moves as far as the ends, and back again', () => {
    expect(names(movePart(table, 'fin', -1))).toEqual(['engine', 'fin', 'horn']);
    expect(movePart(movePart(table, 'horn', 1), 'horn', -1)).toEqual(table);
    expect(movePart(table, 'engine', -1)).toBe(table);
    expect(movePart(table, 'fin', 1)).toBe(table);
    expect(movePart(table, 'nobody', 1)).toBe(table);
  });

  test('the fuel mark comes and goes without a trace', () => {
    const fuel = changePart(table, 'horn', (row) => withFuel(row, true));
    expect(fuel.rows[1]!.fuel).toBe(true);
    expect(changePart(fuel, 'horn', (row) => withFuel(row, false))).toEqual(table);
  });
});

describe('many parts at once', () => {
  const sheet: Document = { ...smallSheet, sheets: onOneSheet([table]) };
  test('come in as weighing nothing, so that a baseline sees the change, and have their weight then', () => {
    const screws = part('screws', 'Screws', { mass: '1 g', count: '4', x: '0 mm' });
    const fin: Part = {
      ...part('skid', 'Skid', { area: '1 dm²', thickness: '2 mm', material: 'balsa_medium', weighed: '3 g' }),
      shape: 'sheet',
    };
    const changes = addingParts(sheet, table, [screws, fin]);
    const [first] = changes;
    const put = first?.change === 'cell' && first.cell.kind === 'parts' ? first.cell.rows.slice(-2) : [];
    expect(put.map((row) => row.fields.weighed)).toEqual(['0 g', '0 g']);
    const after = cellsOf(applyChanges(sheet, changes).document).find((cell) => cell.name === 'parts') as PartsCell;
    expect(after.rows.slice(0, -2)).toEqual(table.rows);
    expect(after.rows.slice(-2)).toEqual([screws, { ...fin, weighed_as: 'balsa_medium' }]);
  });
});

describe('a mass from the library', () => {
  const row = { name: 'screw_m3x16', title: 'Screw, M3 × 16 mm' };
  const made = (rows: readonly Part[], of: Part) => {
    const sheet: Document = { ...smallSheet, sheets: onOneSheet([{ ...table, rows }]) };
    const { changes, name } = massOfRow(sheet, 'parts', of, row, new Set(rows.map((each) => each.name)));
    const after = cellsOf(applyChanges(sheet, changes).document).find((cell) => cell.name === 'parts') as PartsCell;
    return { name, rows: after.rows };
  };
  test('calls a part that has no title of its own', () => {
    const fresh = newPart(new Set());
    const fields = { mass: 'screw_m3x16.mass', x: '0 mm' };
    expect(made([fresh], fresh)).toEqual({
      name: 'screw_m3_16_mm',
      rows: [{ name: 'screw_m3_16_mm', title: 'Screw, M3 × 16 mm', shape: 'point', fields }],
    });
  });
  test('leaves the title that somebody gave', () => {
    const screws = part('screws', 'Engine screws');
    expect(made([screws], screws)).toEqual({
      name: 'screws',
      rows: [{ ...screws, fields: { ...screws.fields, mass: 'screw_m3x16.mass' } }],
    });
  });
});

describe('another shape', () => {
  const first = { material: 'balsa_medium', stack: 'tail_stock', wire: 'wire_1_60' };
  test('has every text that it needs, and keeps what the old one had', () => {
    for (const shape of PART_SHAPES) {
      const made = reshaped(part('horn', 'Horn'), shape, first);
      expect(made.fields).toMatchObject({ mass: '5 g', x: '10 mm' });
      const blank = partFields(shape).filter((field) => field.blank === undefined && !made.fields[field.name]);
      expect(blank.map((field) => field.name)).toEqual([]);
    }
    expect(reshaped(part('horn', 'Horn'), 'sheet', first).fields).toEqual({
      mass: '5 g',
      x: '10 mm',
      area: '0 cm²',
      thickness: '0 mm',
      material: 'balsa_medium',
    });
  });
  test('lacks what the sheet has none of', () => {
    expect(reshaped(part('horn', 'Horn'), 'stack', { material: '', stack: '', wire: '' }).fields.stack).toBeUndefined();
  });
});

describe('another title', () => {
  const sheet = (rows: readonly Part[], formula: string): Document => ({
    ...smallSheet,
    sheets: onOneSheet([
      { ...table, rows },
      { kind: 'formula', id: 'c8', name: 'sums', title: 'Sums', lines: [{ name: 'half', text: formula, unit: '' }] },
    ]),
  });
  const retitled = (document: Document, row: number, title: string) => {
    const cell = cellsOf(document)[0] as PartsCell;
    const { changes, name } = retitle(document, 'parts', cell.rows[row]!, title, taken(cell));
    const done = applyChanges(document, changes);
    expect(applyChanges(done.document, done.inverse).document).toEqual(document);
    const [parts, sums] = cellsOf(done.document);
    if (parts?.kind !== 'parts' || sums?.kind !== 'formula') throw new Error('the cells are gone');
    return { name, part: parts.rows[row]!, text: sums.lines[0]!.text };
  };

  test('takes the name with it where the name came from the title, and every formula follows', () => {
    const told = retitled(sheet(table.rows, 'parts.horn.mass / 2'), 1, 'Elevator horn, 25 mm');
    expect(told.name).toBe('elevator_horn_25_mm');
    expect(told.part).toMatchObject({ name: 'elevator_horn_25_mm', title: 'Elevator horn, 25 mm' });
    expect(told.text).toBe('parts.elevator_horn_25_mm.mass / 2');
  });
  test('leaves a name alone that somebody chose', () => {
    const rows = [part('h', 'Horn')];
    expect(retitled(sheet(rows, 'parts.h.mass'), 0, 'Elevator horn')).toMatchObject({
      name: 'h',
      part: { name: 'h', title: 'Elevator horn' },
      text: 'parts.h.mass',
    });
  });
  test('never takes a name that is taken, or that means something in formulas', () => {
    expect(retitled(sheet(table.rows, '1'), 1, 'Fin').name).toBe('fin_2');
    expect(retitled(sheet(table.rows, '1'), 1, 'Mass').name).toBe('mass_2');
    expect(retitled(sheet(table.rows, '1'), 1, 'Min').name).toBe('min_2');
    expect(retitled(sheet(table.rows, '1'), 1, '½').name).toBe('horn');
  });
});
