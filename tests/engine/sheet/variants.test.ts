import { describe, expect, test } from 'vitest';
import { copyingSheet } from '../../../engine/sheet/copy-sheet';
import { differencesOf } from '../../../engine/sheet/differences';
import type { Document, Variant } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import type { BlockLinks } from '../../../engine/sheet/links';
import { textAt } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges, type Change } from '../../../engine/sheet/transaction';
import { usesOf } from '../../../engine/sheet/uses';
import { readVariants, writeVariants } from '../../../engine/sheet/variant-text';
import {
  addingVariants,
  changesOfVariant,
  chartingVariant,
  editingVariant,
  freeVariantName,
  isInDesign,
  keepingVariant,
  removingVariant,
  renamingVariant,
  setNow,
  variantAsBaseline,
  variantNameFault,
} from '../../../engine/sheet/variants';
import { library, smallDesign } from './small';

const blocks: readonly BlockLinks[] = library.blocks.map(({ kind, role = kind, fields }) => ({
  ...{ kind, role },
  fields: Object.entries(fields).map(([name, spec]) => ({ name, kind: 'link' in spec ? 'link' : 'quantity' })),
}));

const heavy: Variant = { name: 'Heavy tip', changes: { tip_weight: '30 g', tail_stock: 'faced' } };
const withVariants = (...variants: Variant[]): Document => ({ ...smallDesign(), variants });
const names = ({ variants = [] }: Document): string[] => variants.map(({ name }) => name);

/** The design after an edit; taking it back gives the design from before to the byte. */
function edited(document: Document, changes: readonly Change[]): Document {
  const { document: after, inverse } = applyChanges(document, changes);
  expect(serialise(applyChanges(after, inverse).document)).toBe(serialise(document));
  return after;
}

describe('the name of a variant', () => {
  test('is kept as it is written where no other has it, and counted on where one has, whatever its capitals', () => {
    expect(freeVariantName(withVariants(heavy), ' Ply  tail ')).toBe('Ply tail');
    expect(freeVariantName(withVariants(heavy), 'HEAVY TIP')).toBe('HEAVY TIP 2');
    expect(freeVariantName(withVariants({ ...heavy, name: 'V 2' }), 'V 2')).toBe('V 3');
    expect(freeVariantName(smallDesign(), ' ')).toBe('Variant');
  });
  test('is refused when it is blank or another’s', () => {
    const document = withVariants(heavy, { name: 'Ply tail', changes: {} });
    expect(variantNameFault(document, 'Ply tail', 'heavy TIP')).toBe(
      'Another variant is called “Heavy tip” already. Choose another name.',
    );
    expect(variantNameFault(document, 'Ply tail', '  ')).toBe(
      'A variant needs a name. Type what you call it, such as “Ply tail”.',
    );
    expect(variantNameFault(document, 'Ply tail', 'PLY tail')).toBeUndefined();
    expect(names(edited(document, renamingVariant(document, 'Ply tail', ' Birch  tail')))).toEqual([
      'Heavy tip',
      'Birch tail',
    ]);
  });
  test('is made free in a file that has it twice', () => {
    const opened = openText(JSON.stringify(withVariants(heavy, heavy, { ...heavy, name: 'heavy tip' })));
    expect(opened.ok && names(opened.document)).toEqual(['Heavy tip', 'Heavy tip 2', 'heavy tip 3']);
  });
});

describe('a variant', () => {
  test('is added, edited, shown on charts and removed, and the design stays', () => {
    let document = edited(smallDesign(), addingVariants(smallDesign(), [heavy, heavy]));
    expect(names(document)).toEqual(['Heavy tip', 'Heavy tip 2']);
    document = edited(document, editingVariant(document, 'Heavy tip 2', 'tip_weight', '35 g'));
    document = edited(document, editingVariant(document, 'Heavy tip 2', 'tail_stock', undefined));
    expect(document.variants![1]!.changes).toEqual({ tip_weight: '35 g' });
    document = edited(document, removingVariant(document, 'Heavy tip'));
    document = edited(document, chartingVariant(document, 'Heavy tip 2', true));
    expect(document.variants).toEqual([{ name: 'Heavy tip 2', changes: { tip_weight: '35 g' }, on_charts: true }]);
    expect(serialise(edited(document, removingVariant(document, 'Heavy tip 2')))).toBe(serialise(smallDesign()));
  });
  test('of what is set holds every slide and choice, and what differs from the baseline', () => {
    const { document } = applyChanges({ ...smallDesign(), baseline: {} }, [
      { change: 'text', path: 'motor.pull', text: '9 N' },
      { change: 'text', path: 'tip_weight', text: '25 g' },
    ]);
    expect(setNow(document)).toEqual({
      engine_station: '-150',
      tip_weight: '25 g',
      cord_length: '18.3 m',
      tail_stock: 'soft',
      cord_set: 'thin',
      'motor.pull': '9 N',
    });
  });
  test('stands on charts with two others at most: one more takes the place of the first', () => {
    const four = ['a', 'b', 'c', 'd'].map((name): Variant => ({ name, changes: {} }));
    const document = four.reduce<Document>(
      (now, { name }) => applyChanges(now, chartingVariant(now, name, true)).document,
      withVariants(...four),
    );
    expect(document.variants!.map(({ on_charts }) => on_charts)).toEqual([undefined, true, true, true]);
    const less = applyChanges(document, chartingVariant(document, 'c', false)).document;
    expect(less.variants!.map(({ on_charts }) => on_charts)).toEqual([undefined, true, undefined, true]);
  });
  test('that is kept becomes the design in one step, whatever the order of its changes, and then is no other', () => {
    const document = withVariants(heavy);
    const kept = edited(document, keepingVariant(document, heavy.name, blocks));
    expect([textAt(kept, 'tip_weight'), textAt(kept, 'tail_stock')]).toEqual(['30 g', 'faced']);
    expect(kept.variants).toEqual([heavy]);
    expect(changesOfVariant(kept, heavy, () => true).texts).toEqual([]);
    const turned = { ...heavy, changes: { tail_stock: 'faced', tip_weight: '30 g' } };
    const other = { ...document, variants: [turned] };
    expect(serialise(applyChanges(other, keepingVariant(other, heavy.name, blocks)).document)).toBe(serialise(kept));
  });
  test('becomes the baseline and leaves the design as it is set', () => {
    const document: Document = { ...withVariants(heavy), baseline: { cord_length: '17 m' } };
    const after = edited(document, variantAsBaseline(document, heavy.name, blocks));
    expect(cellsOf(after)).toEqual(cellsOf(document));
    expect(differencesOf(after)).toEqual([
      { path: 'tip_weight', before: '30 g', now: '21 g' },
      { path: 'tail_stock', before: 'faced', now: 'soft' },
    ]);
  });
  test('keeps what has no place in the design, and does nothing there', () => {
    const changes = {
      tip_weight: '30 g',
      'wing.span': '1 m',
      'motor.gears': '3',
      'lap.engine': 'motor',
      'words.text': 'x',
    };
    const lost: Variant = { name: 'Lost', changes };
    const document = withVariants(lost);
    const told = changesOfVariant(document, lost, (path) => isInDesign(document, path, blocks));
    expect(told).toEqual({
      texts: [['tip_weight', '30 g']],
      gone: ['wing.span', 'motor.gears', 'lap.engine', 'words.text'],
    });
    const kept = edited(document, keepingVariant(document, 'Lost', blocks));
    expect(kept.variants).toEqual([lost]);
    expect(kept.sheets).toEqual(
      applyChanges(document, [{ change: 'text', path: 'tip_weight', text: '30 g' }]).document.sheets,
    );
  });
  test('follows what is renamed, and is told among what uses a thing', () => {
    const document = withVariants({
      name: 'A',
      changes: { 'motor.station': 'engine_station − 5 mm', tail_stock: 'faced' },
    });
    const renamed = (path: string, to: string): Variant => {
      const answer = rename(document, path, to);
      if (!answer.ok) throw new Error(answer.message);
      return applyChanges(document, answer.changes).document.variants![0]!;
    };
    expect(renamed('engine_station', 'nose').changes['motor.station']).toBe('nose − 5 mm');
    expect(renamed('motor', 'power').changes).toEqual({
      'power.station': 'engine_station − 5 mm',
      tail_stock: 'faced',
    });
    expect(renamed('tail_stock.faced', 'clad').changes.tail_stock).toBe('clad');
    expect(usesOf(document, 'engine_station')).toContainEqual({
      cell: 'id_motor',
      path: 'motor.station',
      variant: 'A',
    });
    expect(
      usesOf({ ...document, variants: [], baseline: { 'motor.station': 'engine_station' } }, 'engine_station'),
    ).toContainEqual({
      ...{ cell: 'id_motor', path: 'motor.station', baseline: true },
    });
  });
  test('stands in the file in the order of its paths, blank texts too, and comes back', () => {
    const document = withVariants({ name: 'B', changes: { tip_weight: '30 g', 'motor.lost': '' }, on_charts: true });
    const text = serialise(document);
    expect(text).toContain('"changes": {\n        "motor.lost": "",\n        "tip_weight": "30 g"\n      },');
    expect(openText(text)).toEqual({ ok: true, document });
  });
  test('stays with its design when a sheet is copied to another', () => {
    const { document } = applyChanges(smallDesign(), copyingSheet(smallDesign(), withVariants(heavy), 's1', blocks));
    expect(document.variants).toBeUndefined();
  });
});

describe('variants as a text', () => {
  test('come to another design under free names', () => {
    const read = readVariants(writeVariants([{ ...heavy, on_charts: true }]));
    expect(read).toEqual({ ok: true, variants: [heavy] });
    const document = withVariants(heavy);
    const after = applyChanges(document, addingVariants(document, [heavy])).document;
    expect(names(after)).toEqual(['Heavy tip', 'Heavy tip 2']);
  });
  test.each([
    '',
    '12',
    '{"format":"tetherwright variants","variants":[]}',
    '{"format":"tetherwright variants","variants":[{"name":"A","changes":{"a":1}}]}',
    '{"format":"tetherwright variants","variants":[{"name":"A","changes":{"constructor":"1"}}]}',
    `{"format":"tetherwright variants","variants":${'['.repeat(2500)}${']'.repeat(2500)}}`,
    serialise(smallDesign()),
  ])('%# is refused where it is none', (text) => {
    expect(readVariants(text)).toEqual({
      ok: false,
      message:
        'This text holds no variants. Press “Copy” at a variant of the other design, then paste the whole of it here. Nothing was added.',
    });
  });
});
