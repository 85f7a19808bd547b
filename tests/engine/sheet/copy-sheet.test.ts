import { describe, expect, test } from 'vitest';
import { copyingSheet } from '../../../engine/sheet/copy-sheet';
import type { Document } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { cord, documentOf, lap, library, motor, smallDesign } from './small';

const blocks = [motor, cord, lap].map(({ kind, role, fields }) => ({
  kind,
  role: role ?? kind,
  fields: Object.entries(fields).map(([name, field]) =>
    'link' in field ? { name, kind: 'link', role: field.link } : { name, kind: 'quantity' },
  ),
}));
const copied = (to: Document, from: Document): Document =>
  applyChanges(to, copyingSheet(to, from, 's1', blocks), { frozen: true }).document;
const faults = (document: Document): string[] =>
  faultsOfLive(openLive(document, library)).map((fault) => fault.message);
const value = (document: Document, path: string): number => {
  const { compiled, state } = openLive(document, library);
  return state.m[compiled.program.slotOf.get(path)!]!;
};

describe('a sheet is copied', () => {
  test('within its design: all of it under names of its own, and nothing else changes', () => {
    const before = smallDesign();
    const after = copied(before, before);
    expect(after.sheets.map((sheet) => sheet.title)).toEqual(['Decide', 'Decide, copy']);
    expect(faults(after)).toEqual([]);
    const names = cellsOf(after).map((cell) => cell.name);
    expect(new Set(names).size).toBe(names.length);
    for (const path of ['parts.x', 'lap.pull']) expect(value(after, path)).toBe(value(before, path));
    // The copy hangs on itself: its lap flies its own motor, at its own station.
    const moved = applyChanges(after, [{ change: 'text', path: 'engine_station_2', text: '-180 mm' }]).document;
    expect(value(moved, 'parts_2.x')).toBeLessThan(value(after, 'parts_2.x'));
    expect(value(moved, 'parts.x')).toBe(value(after, 'parts.x'));
  });
  test('into a design that has nothing of it: under its own names, with the rows that it uses', () => {
    const own = { table: 'materials', title: 'Foam', source: 'weighed', values: { density: '30 kg/m³' } };
    const rows = [
      { ...own, name: 'foam' },
      { ...own, name: 'unused' },
    ];
    const from = applyChanges({ ...smallDesign(), rows }, [
      { change: 'text', path: 'parts.wing.material', text: 'foam' },
    ]).document;
    const after = copied(documentOf([]), from);
    expect(after.sheets[1]!.pieces.map((cell) => cell.name)).toEqual(cellsOf(from).map((cell) => cell.name));
    expect(after.rows.map((row) => row.name)).toEqual(['foam']);
    expect(faults(after)).toEqual([]);
    expect(value(after, 'parts.x')).toBe(value(from, 'parts.x'));
  });
  test('a row of the same name that is another gets a name of its own', () => {
    const foam = { table: 'materials', name: 'foam', title: 'Foam', source: 'weighed' };
    const from = applyChanges({ ...smallDesign(), rows: [{ ...foam, values: { density: '30 kg/m³' } }] }, [
      { change: 'text', path: 'parts.wing.material', text: 'foam' },
    ]).document;
    const after = copied({ ...documentOf([]), rows: [{ ...foam, values: { density: '60 kg/m³' } }] }, from);
    expect(after.rows.map((row) => row.name)).toEqual(['foam', 'foam_2']);
    expect(value(after, 'parts.wing.mass')).toBe(value(from, 'parts.wing.mass'));
    expect(copied({ ...documentOf([]), rows: from.rows }, from).rows).toEqual(from.rows);
  });
  test('in one edit, which is taken back to the byte, and the file of it opens', () => {
    const before = smallDesign();
    const { document, inverse } = applyChanges(before, copyingSheet(before, before, 's1', blocks));
    expect(serialise(applyChanges(document, inverse).document)).toBe(serialise(before));
    expect(openText(serialise(document))).toEqual({ ok: true, document });
  });
  test('that is not there is a mistake of the program', () => {
    expect(() => copyingSheet(smallDesign(), smallDesign(), 's9', blocks)).toThrow(
      new RangeError('There is no sheet with id s9'),
    );
  });
});
