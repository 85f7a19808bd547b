import { describe, expect, it } from 'vitest';
import { type AnyBlock, isLink } from '../../../engine/blocks/block';
import { partsResults } from '../../../engine/blocks/parts/results';
import { partsTheory } from '../../../engine/blocks/parts/theory';
import { blocks } from '../../../engine/blocks/registry';
import { functionNames, parseFormula } from '../../../engine/formula/index';
import { tables } from '../../../engine/library/index';
import { formulaSymbols } from '../../../engine/reference/formula-symbols';
import { type Chapter, fieldAnchor, makeReference, resultAnchor } from '../../../engine/reference/index';
import { units, unparted } from '../../../engine/units/index';

const chapters = makeReference();
const chapter = (id: string): Chapter => chapters.find((each) => each.id === id)!;
const entries = (of: Chapter) => of.pieces.flatMap((piece) => (piece.kind === 'entry' ? [piece] : []));
const rows = (of: Chapter) => of.pieces.flatMap((piece) => (piece.kind === 'table' ? piece.rows : []));
const ids = chapters.flatMap((each) => [
  each.id,
  ...each.pieces.flatMap((piece) => (piece.kind === 'entry' || piece.kind === 'heading' ? [piece.id] : [])),
]);

describe.each(blocks.map((block): [string, AnyBlock] => [block.kind, block]))('the block %s', (kind, block) => {
  it('says its equations, each with its source', () => {
    expect(block.theory?.equations.length ?? 0, 'theory.equations').toBeGreaterThan(0);
    for (const { title, text, doc, source } of block.theory!.equations) {
      expect(title).toMatch(/^\p{Lu}/u);
      expect(text.trim(), title).not.toBe('');
      expect(source, title).toMatch(/\.$/);
      if (doc !== undefined) expect(doc, title).toMatch(/\.$/);
    }
  });
  it('says what it leaves out', () => {
    expect(block.theory?.notModelled.length ?? 0, 'theory.notModelled').toBeGreaterThan(0);
    for (const sentence of block.theory!.notModelled) expect(sentence).toMatch(/^\p{Lu}.*\.$/u);
  });
  it('has an entry for every field, outline and result, and none else', () => {
    const fields = Object.entries(block.fields).filter(([, spec]) => !isLink(spec));
    expect(entries(chapter(`block.${kind}`)).map(({ id }) => id)).toEqual([
      ...fields.map(([name]) => fieldAnchor(kind, name)),
      ...Object.keys(block.outlines ?? {}).map((name) => fieldAnchor(kind, name)),
      ...Object.keys(block.results).map((name) => resultAnchor(kind, name)),
    ]);
  });
});

describe('the reference', () => {
  it('has every place once, so that a link leads to one place', () => {
    expect(new Set(ids).size).toBe(ids.length);
  });
  it('leaves no hole of a reason open', () => {
    expect(JSON.stringify(chapters)).not.toMatch(/\{[\w.]+\}/);
    const said = JSON.stringify(chapter('block.flight'));
    expect(said).toContain('it stalls at ⟨greatest lift coefficient⟩');
  });
  it('tells the parts like a block', () => {
    const told = entries(chapter('block.parts')).map(({ id }) => id);
    for (const name of Object.keys(partsResults)) expect(told).toContain(resultAnchor('parts', name));
    for (const { source } of partsTheory.equations) expect(source).toMatch(/\.$/);
  });
  it('marks every usual band as common practice', () => {
    const pull = entries(chapter('block.flight')).find(({ id }) => id === resultAnchor('flight', 'pull_per_weight'));
    expect(pull?.facts).toContain('usually 3 to 4\u00a0×\u00a0weight (common practice, no source)');
    expect(rows(chapter('bands')).map(([, name]) => name)).toContain('flight.pull_per_weight');
  });
  it('writes a field with unit, default, range and basis', () => {
    const told = entries(chapter('block.air')).find(({ id }) => id === fieldAnchor('air', 'elevation'));
    expect(told).toEqual({
      kind: 'entry',
      id: 'field.air.elevation',
      symbol: 'z',
      title: 'Elevation of the field',
      name: 'air.elevation',
      doc: 'Above sea level. Gives the pressure where none is typed.',
      facts: ['m or ft', 'default 0\u00a0m', '−400 to 4500\u00a0m'],
      notes: [],
    });
  });
  it('has every unit, function and row of data, with its source', () => {
    expect(rows(chapter('units')).map(([name]) => name)).toEqual(
      expect.arrayContaining(units.map((unit) => unit.name || '(none)')),
    );
    const functions = entries(chapter('formulas')).flatMap(({ name, facts }) => [name.split('(')[0], ...facts]);
    for (const name of functionNames) expect(functions.join(' ')).toContain(name);
    for (const table of tables) {
      const told = rows(chapter(table.name));
      expect(told.length).toBe(table.rows.length);
      for (const [k, row] of table.rows.entries()) {
        expect(told[k]).toContain(unparted(row.source));
        expect(told[k]?.at(-1)).toBe(row.memory ? 'from memory' : '');
      }
    }
    expect(rows(chapter('wire')).map(([title]) => title)).toContain(
      unparted('Music wire, 1.60 mm (0.063 in); in inches: Music wire, 1/16 in (0.063 in)'),
    );
  });
  it('puts a heading over equations and entries, so that no order of headings is left out', () => {
    for (const { id, pieces } of chapters) {
      const heading = pieces.findIndex(({ kind }) => kind === 'heading');
      const first = pieces.findIndex(({ kind }) => kind === 'equation' || kind === 'entry');
      expect([id, first < 0 || (heading >= 0 && heading < first)]).toEqual([id, true]);
    }
  });
  it('gives tables whose rows are as wide as their heads', () => {
    for (const { pieces } of chapters) {
      for (const piece of pieces) {
        if (piece.kind === 'table') for (const row of piece.rows) expect(row.length).toBe(piece.columns.length);
      }
    }
  });
});

describe('the formula language by example', () => {
  const examples = formulaSymbols.flatMap(([written]) => written.split(/, (?![^(]*\))/));
  it.each(examples)('%s is a formula', (text) => {
    expect(parseFormula(text)).toMatchObject({ ok: true });
  });
});
