import { describe, expect, test } from 'vitest';
import { applyChanges, type Document, type TableDescription } from '../../../engine/index';
import { describeTable } from '../../../engine/study/describe/tables';
import { addRow, changeRow, draftFaults, emptyDraft, removeRow, rowOf } from '../../../workbook/library/own-edits';
import { numbersTold } from '../../../workbook/library/told';
import { smallTables } from '../../engine/sheet/small-library';
import { smallSheet } from '../store/small-sheet';

const tables: readonly TableDescription[] = smallTables.map(describeTable);
const cords = tables[2]!;
const good = { title: 'Rope, waxed', source: 'weighed', values: { weave: 'laid', diameter: '0.4', strength: '' } };

describe('a draft of an own row', () => {
  test('says all that it lacks, and which unit a number takes', () => {
    expect(draftFaults(emptyDraft, cords)).toEqual([
      'The title is blank. Write what this cord is called.',
      'Weave is blank. Pick one.',
      'Diameter is blank. Type it in mm or with another unit.',
      'The source is blank. Write where the numbers come from, such as “weighed on the postal scale” or the packet.',
    ]);
  });
  test('says what cannot be read', () => {
    expect(draftFaults({ ...good, values: { ...good.values, diameter: '0.4 mn' } }, cords)).toHaveLength(1);
    expect(draftFaults(good, cords)).toEqual([]);
  });
  test('becomes a row under a name that nothing has, not even the library', () => {
    const named = rowOf({ ...good, title: 'Thin cord' }, 'cords', smallSheet, tables);
    expect(named).toEqual({
      table: 'cords',
      name: 'thin_cord_2',
      title: 'Thin cord',
      source: 'weighed',
      values: { weave: 'laid', diameter: '0.4' },
    });
    expect(rowOf({ ...good, title: '!' }, 'cords', smallSheet, tables).name).toBe('own_row');
    expect(rowOf({ ...good, title: 'tip weight' }, 'cords', smallSheet, tables).name).toBe('tip_weight_2');
  });
});

test('an own row is added, changed and removed, each as one step back', () => {
  const row = rowOf(good, 'cords', smallSheet, tables);
  const steps = [
    (document: Document) => addRow(document, row),
    (document: Document) => changeRow(document, row.name, { source: 'packet' }),
    (document: Document) => removeRow(document, row.name),
  ];
  const seen = [smallSheet];
  for (const step of steps) {
    const before = seen.at(-1)!;
    const { document, inverse } = applyChanges(before, step(before));
    expect(applyChanges(document, inverse).document).toEqual(before);
    seen.push(document);
  }
  expect(seen.map((document) => document.rows.map((each) => each.source))).toEqual([[], ['weighed'], ['packet'], []]);
});

test('what a row gives is told in the unit set of the sheet, and what is not known as that', () => {
  expect(numbersTold(cords, cords.rows[1]!, 'metric')).toBe('weave plaited, diameter 0.5\u00a0mm, strength not known');
  expect(numbersTold(cords, cords.rows[0]!, 'inch_pound')).toBe(
    'weave laid, diameter 0.012\u00a0in, strength 27.0\u00a0lbf',
  );
});
