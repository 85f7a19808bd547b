import { describe, expect, test } from 'vitest';
import { propeller } from '../../../engine/blocks/propeller/calculated';
import type { BlockCell, Document, NameInfo, OwnRow } from '../../../engine/index';
import { openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { describeBlock } from '../../../engine/study/describe/blocks';
import { describeTable } from '../../../engine/study/describe/tables';
import { library } from '../../../engine/study/index';
import { keptBefore, keptDraft, keptFault } from '../../../workbook/cells/block/kept-row';
import { rowOf } from '../../../workbook/library/own-edits';
import { showValue } from '../../../workbook/store/show';
import { block, withEngine } from '../../engine/blocks/engine-designs';

const described = describeBlock(propeller);
const tables = library.tables.map(describeTable);
const measured = { still_shaft_speed: '11000 rpm', still_pull: '8.4 N' };
const size = { diameter: '9 in', pitch: '6 in', shape: 'moulded' };

const design = (fields: BlockCell['fields'], rows: readonly OwnRow[] = []): Document => ({
  ...withEngine('two_stroke', {}, block('propeller', 'propeller', fields)),
  rows,
});

/** A design as the page reads it. */
function page(document: Document) {
  const { compiled, state } = openLive(document, library);
  const names = new Map(compiled.names.map((info) => [info.path, info]));
  const name = (path: string): NameInfo | undefined => names.get(path);
  const value = (path: string): number => state.m[names.get(path)?.slot ?? -1] ?? Number.NaN;
  const shown = (path: string): string => (names.has(path) ? showValue(names.get(path)!, value(path)) : '–');
  const cell = cellsOf(document).find((each): each is BlockCell => each.kind === 'model' && each.of === 'propeller')!;
  return { cell, sheet: { name, value, shown } };
}
const faultOf = (fields: BlockCell['fields']): string | undefined => {
  const { cell, sheet } = page(design(fields));
  return keptFault(cell, described, sheet);
};

describe('a propeller that was tuned', () => {
  const { cell, sheet } = page(design({ ...size, ...measured }));
  const draft = keptDraft(cell, described, sheet);

  test('is kept with its size, its shape, what was found, and from what', () => {
    expect(draft.title).toBe('229\u00a0mm × 152\u00a0mm, tuned');
    expect(draft.source).toBe(
      'Tuned by what was measured: rpm in the pull at rest 11\u202f000\u00a0rpm, pull at rest, measured 8.4\u00a0N',
    );
    expect(draft.values).toMatchObject({ diameter: '228.6 mm', pitch: '152.4 mm', shape: 'moulded' });
    expect(draft.values.angle_shift).toMatch(/^-?\d+\.\d{6,}°$/);
    expect(Number(draft.values.chord_factor)).toBeGreaterThan(0.5);
  });

  test('pulls the same when it is read back from its row without the measurements', () => {
    const row = rowOf(draft, 'propellers', design({}), tables);
    const columns = ['diameter', 'pitch', 'shape', 'angle_shift', 'chord_factor'];
    const fields = Object.fromEntries(columns.map((column) => [column, `${row.name}.${column}`]));
    const read = page(design(fields, [row])).sheet.value;
    for (const path of ['propeller.static_thrust', 'propeller.thrust', 'propeller.power'])
      expect(read(path) / sheet.value(path), path).toBeCloseTo(1, 8);
    const untuned = page(design(size)).sheet.value('propeller.static_thrust');
    expect(Math.abs(untuned / sheet.value('propeller.static_thrust') - 1)).toBeGreaterThan(0.01);
    expect(keptBefore([row], 'propellers', draft)).toBe(row);
    expect(keptBefore([row], 'propellers', { ...draft, values: { ...draft.values, pitch: '6 in' } })).toBeUndefined();
    expect(keptBefore([row], 'materials', draft)).toBeUndefined();
  });
});

test('there is nothing to keep without a measurement or without an answer, and not what a row has no place for', () => {
  expect(faultOf({ ...size, ...measured })).toBeUndefined();
  expect(faultOf(size)).toBe('');
  expect(faultOf({ ...size, still_pull: '8.4 N' })).toBe('');
  expect(faultOf({ ...size, ...measured, blades: '3', chord_60: '20 mm' })).toBe(
    'It can’t be kept as an own row, which has no place for what is typed here: blades, chord at 60 %.',
  );
});
