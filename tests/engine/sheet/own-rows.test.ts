import { describe, expect, test } from 'vitest';
import type { ChoiceCell, Document, OwnRow } from '../../../engine/sheet/document';
import { faultsOfLive, type Live, openLive } from '../../../engine/sheet/live';
import { textAt } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { usesOf } from '../../../engine/sheet/uses';
import { documentOf, formula, library, part, parts } from './small';

const rope: OwnRow = {
  table: 'cords',
  name: 'rope',
  title: 'Rope',
  source: 'weighed',
  values: { weave: 'plaited', diameter: '0.4 mm' },
};
const plank: OwnRow = {
  table: 'materials',
  name: 'plank',
  title: 'Plank',
  source: 'weighed',
  values: { density: '150 kg/m³' },
};
const pick: ChoiceCell = {
  kind: 'choice',
  id: 'id_cord_pick',
  name: 'cord_pick',
  title: 'Cord',
  of: 'library',
  table: 'cords',
  columns: [],
  options: ['rope', 'thin_cord'].map((name) => ({ name, title: `A ${name}`, pattern: 'plain' as const })),
  text: 'rope',
};
const keel = part('keel', 'solid', { volume: '100 cm³', material: 'plank', x: '0 mm' });

const live = (document: Document): Live => openLive(document, library);
const at = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;
const told = (document: Document): string[] =>
  faultsOfLive(live(document)).map((fault) => `${fault.path}: ${fault.message}`);

describe('an own row', () => {
  test('is one of its table: picked, read and left blank like a row of the library', () => {
    const design = live(documentOf([pick, formula('sums', { wide: 'cord_pick.diameter' })], { rows: [rope] }));
    expect(faultsOfLive(design)).toEqual([]);
    expect(at(design, 'wide')).toBe(0.0004);
    expect(at(design, 'cord_pick.weave')).toBe(1);
    expect(at(design, 'cord_pick.strength')).toBeNaN();
  });

  test('stands before a row of the library with its name', () => {
    const own = { ...plank, name: 'soft_wood' };
    const row = part('keel', 'solid', { volume: '100 cm³', material: 'soft_wood', x: '0 mm' });
    expect(at(live(documentOf([parts([row])], { rows: [own] })), 'parts.keel.mass')).toBeCloseTo(0.015, 12);
  });

  test('without a number that its table needs is a fault at that place', () => {
    expect(told(documentOf([pick], { rows: [{ ...rope, values: { weave: 'plaited' } }] }))).toContain(
      'rope.diameter: The diameter of Rope is blank. Type a length, such as “10\u00a0mm”.',
    );
    expect(told(documentOf([], { rows: [{ ...rope, values: { weave: 'knit', diameter: '3 kg' } }] }))).toEqual([
      'rope.weave: Nothing is called knit. Write one of laid, plaited.',
      'rope.diameter: 3\u00a0kg is a mass; here a length is wanted. Write a length, such as 10\u00a0mm.',
    ]);
  });

  test('of no table, or with a number that its table does not have, is said', () => {
    expect(told(documentOf([], { rows: [{ ...rope, table: 'cord' }] }))).toEqual([
      'rope: Rope is a row of “cord”: the library has no such table. Its tables are materials, finishes, cords. Did you mean cords?',
    ]);
    expect(told(documentOf([], { rows: [{ ...plank, values: { density: '150', modulis: '3 GPa' } }] }))).toEqual([
      'plank.modulis: Plank is a material and gives no “modulis”. It gives density, modulus. Did you mean modulus?',
    ]);
  });

  test('with a name that something else has is said', () => {
    expect(told(documentOf([formula('plank', { a: '1' })], { rows: [plank] }))).toEqual([
      'plank: Two things are called “plank”. Give one of them another name.',
    ]);
  });
});

describe('the name of an own row', () => {
  const design = documentOf(
    [
      pick,
      parts([keel]),
      formula('sums', { same: 'cord_pick = rope ? 1 : 2', half: 'rope.diameter / 2' }),
      {
        kind: 'trial_series',
        id: 'id_each',
        name: 'each',
        title: 'Each',
        axes: [{ of: 'cord_pick', low: '', high: '', count: 0, options: ['rope'] }],
        wanted: ['same'],
      },
    ],
    { rows: [rope, plank], figures: ['rope.diameter'], baseline: { cord_pick: 'rope' } },
  );

  test('changes wherever it is said', () => {
    const renaming = rename(design, 'rope', 'twine');
    if (!renaming.ok) throw new Error(renaming.message);
    const { document: after, inverse } = applyChanges(design, renaming.changes);
    expect(applyChanges(after, inverse).document).toEqual(design);
    expect(told(after)).toEqual([]);
    expect(textAt(after, 'cord_pick')).toBe('twine');
    expect(textAt(after, 'same')).toBe('cord_pick = twine ? 1 : 2');
    expect(textAt(after, 'twine.diameter')).toBe('0.4 mm');
    expect(after.figures).toEqual(['twine.diameter']);
    expect(after.baseline).toEqual({ cord_pick: 'twine' });
    expect(cellsOf(after)[0]).toMatchObject({ options: [{ name: 'twine' }, { name: 'thin_cord' }] });
    expect(cellsOf(after)[3]).toMatchObject({ axes: [{ options: ['twine'] }] });
    expect(JSON.stringify(after)).not.toContain('"rope"');
  });

  test('is found in every place that says it', () => {
    expect(usesOf(design, 'rope')).toEqual([
      { cell: 'id_cord_pick', path: 'cord_pick' },
      { cell: 'id_sums', path: 'same' },
      { cell: 'id_sums', path: 'half' },
      { cell: 'id_each', path: 'each' },
      { cell: '', path: 'rope.diameter' },
      { cell: 'id_cord_pick', path: 'cord_pick', baseline: true },
    ]);
    expect(usesOf(design, 'plank')).toEqual([{ cell: 'id_parts', path: 'parts.keel.material' }]);
    expect(usesOf(documentOf([], { rows: [plank] }), 'plank')).toEqual([]);
    expect(usesOf(design, 'gone')).toEqual([]);
  });

  test('is found where a choice only offers it', () => {
    const offered = documentOf([{ ...pick, text: 'thin_cord' }], { rows: [rope] });
    expect(usesOf(offered, 'rope')).toEqual([{ cell: 'id_cord_pick', path: 'cord_pick' }]);
  });
});
