import { describe, expect, test } from 'vitest';
import type { Document, PartsCell, SpreadCell } from '../../../engine/sheet/document';
import { openText, serialise } from '../../../engine/sheet/file';
import { numberAt, openLive, setLive } from '../../../engine/sheet/live';
import { textAt } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf, withPiece } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { isRemade, madeAsTyped, remadeSentences, weighingPart } from '../../../engine/sheet/weighed-as';
import { setTexts } from '../../../engine/study/command/set';
import { startRunner } from '../../../engine/study/run/runner';
import { fillDesigns } from '../../../engine/study/spread/designs';
import { inputsOf } from '../../../engine/study/spread/inputs';
import { planSpread } from '../../../engine/study/spread/plan';
import { library, smallDesign } from './small';

const partsIn = (document: Document): PartsCell =>
  cellsOf(document).find((cell): cell is PartsCell => cell.kind === 'parts')!;
const rowIn = (document: Document, name: string) => partsIn(document).rows.find((row) => row.name === name)!;
const weigh = (document: Document, path: string, text: string): Document =>
  applyChanges(document, weighingPart(document, path, text)!).document;
const put = (document: Document, path: string, text: string): Document =>
  applyChanges(document, [{ change: 'text', path, text }]).document;
const massOf = (document: Document, part: string): number => {
  const { compiled, state } = openLive(document, library);
  return state.m[compiled.program.slotOf.get(`parts.${part}.mass`)!]!;
};

const isRemadeIn = (document: Document, part: string): boolean => {
  const live = openLive(document, library);
  return isRemade(`parts.${part}`, rowIn(document, part), (path) => numberAt(live, path));
};
/** As on the page, where the numbers of the design are known. */
const weighNow = (document: Document, path: string, text: string): Document => {
  const live = openLive(document, library);
  return applyChanges(document, weighingPart(document, path, text, (of) => numberAt(live, of))!).document;
};

const tolerances: SpreadCell = {
  ...{ kind: 'tolerances', id: 'id_shop', name: 'shop', title: 'Shop', rows: [], parts: true },
  ...{ wanted: ['parts.x'], samples: 100, seed: 1 },
};

describe('a part that was weighed', () => {
  const before = smallDesign();
  const weighed = weigh(before, 'parts.stab.weighed', '20 g');

  test('keeps what it was made of, until it is taken off the scale again', () => {
    expect(rowIn(weighed, 'stab')).toMatchObject({ weighed_as: 'soft', fields: { weighed: '20 g' } });
    expect(rowIn(weigh(weighed, 'parts.stab.weighed', ''), 'stab')).toEqual(rowIn(before, 'stab'));
  });

  test('leaves nothing behind when it is undone', () => {
    const done = applyChanges(before, weighingPart(before, 'parts.stab.weighed', '20 g')!);
    expect(applyChanges(done.document, done.inverse).document).toEqual(before);
  });

  test('counts by its estimate with another material, and by the scale again with the first', () => {
    expect(massOf(weighed, 'stab')).toBe(0.02);
    const estimate = massOf(put(before, 'tail_stock', 'faced'), 'stab');
    expect(massOf(put(weighed, 'tail_stock', 'faced'), 'stab')).toBe(estimate);
    expect(isRemadeIn(put(weighed, 'tail_stock', 'faced'), 'stab')).toBe(true);
    expect(isRemadeIn(weighed, 'stab')).toBe(false);
    // The same without compiling anew, there and back.
    const live = openLive(weighed, library);
    const { program } = live.compiled;
    const at = (path: string): number => live.state.m[program.slotOf.get(path)!]!;
    expect(setLive(live, [['tail_stock', 'faced']], library).structure).toBe(false);
    expect([at('parts.stab.mass'), at('parts.stab.difference')]).toEqual([estimate, Number.NaN]);
    setLive(live, [['tail_stock', 'soft']], library);
    expect(at('parts.stab.mass')).toBe(0.02);
  });

  test('counts by its estimate when another material is named in its place', () => {
    const fin = weigh(before, 'parts.fin.weighed', '20 g');
    expect(massOf(fin, 'fin')).toBe(0.02);
    const soft = put(fin, 'parts.fin.material', 'soft_wood');
    expect(massOf(soft, 'fin')).toBe(massOf(put(before, 'parts.fin.material', 'soft_wood'), 'fin'));
  });

  test('was made of an option that has another name now', () => {
    const renaming = rename(weighed, 'tail_stock.soft', 'other_name');
    expect(renaming.ok).toBe(true);
    if (renaming.ok)
      expect(rowIn(applyChanges(weighed, renaming.changes).document, 'stab').weighed_as).toBe('other_name');
  });

  test('is taken as made of what it is made of now where a file says nothing', () => {
    const old = put(before, 'parts.stab.weighed', '20 g');
    const opened = openText(serialise(old));
    expect(opened.ok && opened.document).toEqual(weighed);
  });

  test('is made of what it is made of now where the command line types its mass', () => {
    const set = setTexts(openLive(before, library), [['parts.stab.weighed', '20 g']], library);
    expect(set.ok && set.live.compiled.document).toEqual(weighNow(before, 'parts.stab.weighed', '20 g'));
    expect(madeAsTyped(before, ['reserve'])).toBe(before);
  });

  test('is off with all that is cut from the same while it counts as re-made', () => {
    const cell = partsIn(before);
    const other = { ...rowIn(before, 'stab'), name: 'half', title: 'Half' };
    const two = withPiece(before, { ...cell, rows: [...cell.rows, other] });
    const both = weigh(weigh(two, 'parts.stab.weighed', '20 g'), 'parts.half.weighed', '20 g');
    const factors = (document: Document): unknown => {
      const spread = inputsOf(tolerances, openLive(document, library));
      if (typeof spread === 'string') throw new Error(spread);
      const masses = ['parts.stab.mass', 'parts.half.mass'];
      return spread.filter(({ path }) => masses.includes(path)).map(({ factor }) => factor?.what);
    };
    expect(factors(two)).toEqual(['stuff', 'stuff']);
    expect(factors(both)).toEqual(['mass', 'mass']);
    expect(factors(put(both, 'tail_stock', 'faced'))).toEqual(['stuff', 'stuff']);
  });

  test('is told where a trade changes what it is made of', () => {
    const cell = partsIn(weighed);
    const rows = cell.rows.map((row) => (row.name === 'stab' ? { ...row, title: 'Stabiliser' } : row));
    const titled = withPiece(weighed, { ...cell, rows });
    expect(remadeSentences(titled, ['tail_stock', 'cord_set'])).toEqual([
      'Stabiliser is weighed as made of “Soft”: with another it counts as re-made, by its estimate.',
    ]);
    expect(remadeSentences(titled, ['cord_set'])).toEqual([]);
    expect(remadeSentences(before, ['tail_stock'])).toEqual([]);
  });
});

describe('a part that was weighed with its sizes known', () => {
  const before = smallDesign();
  const fin = weighNow(before, 'parts.fin.weighed', '20 g');

  test('keeps its thickness and its finish with it, until it is taken off the scale again', () => {
    const { fields } = rowIn(fin, 'fin');
    expect(fields).toMatchObject({ weighed: '20 g', weighed_thickness: '3 mm', weighed_coat: '0 g/m²' });
    expect(rowIn(weighNow(fin, 'parts.fin.weighed', ''), 'fin')).toEqual(rowIn(before, 'fin'));
    expect(rowIn(weighNow(before, 'parts.stab.weighed', '20 g'), 'stab').fields.weighed_areal_mass).toMatch(/g\/m²$/);
  });

  test.each([
    ['parts.fin.thickness', '4 mm'],
    ['parts.fin.coat', '60 g/m²'],
  ])('counts as re-made with another %s, by the scale again with the first, and says so', (path, text) => {
    expect(massOf(fin, 'fin')).toBe(0.02);
    const other = put(fin, path, text);
    expect(massOf(other, 'fin')).toBe(massOf(put(before, path, text), 'fin'));
    expect(isRemadeIn(other, 'fin')).toBe(true);
    expect(massOf(put(other, path, textAt(fin, path) ?? ''), 'fin')).toBe(0.02);
    expect(isRemadeIn(weighNow(other, 'parts.fin.weighed', '21 g'), 'fin')).toBe(false);
    const words = path.endsWith('coat') ? 'finish' : 'thickness';
    expect(remadeSentences(fin, [path])).toEqual([
      `fin is weighed: with another ${words} it counts as re-made, by its estimate.`,
    ]);
    expect(remadeSentences(before, [path])).toEqual([]);
  });

  test('is traded by a variable too, and by what its stack is laid up of', () => {
    const varied = weighNow(
      put(before, 'parts.fin.thickness', 'tip_weight ÷ (20 g) × 3 mm'),
      'parts.fin.weighed',
      '20 g',
    );
    expect(massOf(varied, 'fin')).toBe(0.02);
    expect(massOf(put(varied, 'tip_weight', '25 g'), 'fin')).not.toBe(0.02);
    expect(remadeSentences(varied, ['tip_weight', 'cord_length'])).toEqual([
      'fin is weighed: with another thickness it counts as re-made, by its estimate.',
    ]);
  });

  test('is the same part where its thickness is not quite known', () => {
    const rows = [{ of: 'tip_weight', distribution: 'normal', size: '2 g', above: '' }] as const;
    const cell: SpreadCell = { ...tolerances, rows, parts: false, wanted: ['parts.fin.mass'] };
    const varied = weighNow(
      put(before, 'parts.fin.thickness', 'tip_weight ÷ (20 g) × 3 mm'),
      'parts.fin.weighed',
      '20 g',
    );
    const [first, ...others] = varied.sheets;
    const live = openLive({ ...varied, sheets: [{ ...first!, pieces: [...first!.pieces, cell] }, ...others] }, library);
    const plan = planSpread(cell, live, 0);
    if (typeof plan === 'string') throw new Error(plan);
    const runner = startRunner(live.compiled, plan, fillDesigns(plan));
    const [masses] = runner.run(Uint32Array.from({ length: 50 }, (_, k) => k)).columns;
    runner.finish();
    expect(new Set(masses)).toEqual(new Set([0.02]));
  });
});
