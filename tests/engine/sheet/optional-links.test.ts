import { describe, expect, it } from 'vitest';
import { type AnyBlock, block } from '../../../engine/blocks/block';
import type { BlockCell, Cell, Document } from '../../../engine/sheet/document';
import { keptLinks } from '../../../engine/sheet/links';
import { editLive, faultsOfLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges, type Change } from '../../../engine/sheet/transaction';
import { describeBlock } from '../../../engine/study/describe/blocks';
import { FORCE, LENGTH } from '../../../engine/units/index';
import { cases } from '../../cases';
import { type Random, randomFrom } from './random';
import { blockOf, documentOf, variable, variables } from './small';

const told = { symbol: '', doc: '' };
const metres = { ...told, dimension: LENGTH, unit: 'm' } as const;
const newtons = { ...told, dimension: FORCE, unit: 'N' } as const;

const rope = block({
  kind: 'rope',
  title: 'Rope',
  doc: '',
  fields: { length: { ...metres, title: 'Length', default: 10, range: [1, 100] } },
  results: { sag: { ...metres, title: 'Sag' } },
  reasons: { short: 'The rope is short.' },
  run(m, f, r, i) {
    if (m[f.length + i]! < 2) return 'short';
    m[r.sag + i] = m[f.length + i]! / 10;
    return undefined;
  },
});

const swingResults = { height: { ...metres, title: 'Height' }, tug: { ...newtons, title: 'Tug' } } as const;

/** Reads the swing, so that a swing that takes from it can't do so in its first step. */
const gust = block({
  kind: 'gust',
  title: 'Gust',
  doc: '',
  fields: {
    swing: { link: 'swing', results: swingResults, doc: '' },
    force: { ...newtons, title: 'Force', default: 5, range: [0, 50] },
  },
  results: { tug: { ...newtons, title: 'Tug in it' } },
  reasons: { gale: 'It blows {force}.' },
  run(m, f, r, i) {
    if (m[f.force + i]! > 40) return 'gale';
    m[r.tug + i] = m[f.swing.tug + i]! + m[f.force + i]!;
    return undefined;
  },
});

/** Takes its drop from a rope, and the most that it meets from a gust; 1 m and its own tug where there is none. */
const swing = block({
  kind: 'swing',
  title: 'Swing',
  doc: '',
  fields: {
    rope: { link: 'rope', optional: true, doc: '' },
    gust: { link: 'gust', optional: true, doc: '' },
    drop: { ...metres, title: 'Drop', default: 1, range: [0, 5], taken: 'rope.sag' },
    most: { ...newtons, title: 'Most', default: Number.NaN, range: [0, 99], taken: 'gust.tug', basis: 'Its tug.' },
  },
  results: { ...swingResults, most: { ...newtons, title: 'Most' }, twice: { ...newtons, title: 'Twice the most' } },
  reasons: { low: 'It drags at {height}.' },
  run(m, f, r, i) {
    m[r.height + i] = 4 - m[f.drop + i]!;
    if (m[r.height + i]! < 1) return 'low';
    m[r.tug + i] = 2 * m[r.height + i]!;
    return undefined;
  },
  after: {
    fields: ['most'],
    results: ['most', 'twice'],
    run(m, f, r, i) {
      const most = m[f.most + i]!;
      m[r.most + i] = Number.isNaN(most) ? m[r.tug + i]! : most;
      m[r.twice + i] = 2 * m[r.most + i]!;
    },
  },
});

const blocks: readonly AnyBlock[] = [rope, gust, swing];
const library = { blocks, tables: [] };
const links = blocks.map(describeBlock);
const long = variables('long', variable('length', 'm', '20 m'));

const design = (...cells: Cell[]): Document => documentOf([long, ...cells]);
const at = ({ compiled, state }: Live, path: string): number => state.m[compiled.program.slotOf.get(path)!]!;
const open = (...cells: Cell[]): Live => openLive(design(...cells), library);
const toldOf = (live: Live): readonly string[] => faultsOfLive(live).map(({ path, message }) => `${path}: ${message}`);

describe('an optional link', () => {
  it('is left alone without its piece: the default holds, or the estimate', () => {
    const live = open(blockOf('swing'));
    expect([at(live, 'swing.drop'), at(live, 'swing.height'), at(live, 'swing.most')]).toEqual([1, 3, 6]);
    expect(toldOf(live)).toEqual([]);
  });
  it('is used where its piece is there, unless a value is typed', () => {
    const live = open(blockOf('swing'), blockOf('rope', { length: '20 m' }));
    expect([at(live, 'swing.drop'), at(live, 'swing.height')]).toEqual([2, 2]);
    const typed = open(blockOf('swing', { drop: '0.5 m' }), blockOf('rope', { length: '20 m' }));
    expect([at(typed, 'swing.drop'), at(typed, 'swing.height')]).toEqual([0.5, 3.5]);
  });
  it('takes from what reads the block itself, once that has its number', () => {
    const live = open(blockOf('swing'), blockOf('gust'));
    expect([at(live, 'gust.tug'), at(live, 'swing.most')]).toEqual([11, 11]);
    expect(toldOf(live)).toEqual([]);
  });
  it('waits for a piece that has no answer, and only what needs it waits', () => {
    const live = open(blockOf('swing'), blockOf('gust', { force: '45 N' }));
    expect([at(live, 'swing.height'), at(live, 'swing.most')]).toEqual([3, Number.NaN]);
    expect(toldOf(live)).toEqual([
      'swing.most: The most of swing waits for gust.',
      'swing.twice: The twice the most of swing waits for gust.',
      'gust: It blows 45\u00a0N.',
    ]);
    expect(at(setLive(live, [['swing.most', '12 N']], library).live, 'swing.most')).toBe(12);
  });
  it('asks which is meant where there are two, and names what is not there', () => {
    const two = [blockOf('swing'), blockOf('rope'), blockOf('rope', {}, 'cord')];
    expect(toldOf(open(...two))).toEqual([
      'swing: swing uses a rope where there is one, and the design has 2: rope, cord. Pick the one that is meant.',
    ]);
    const said = (rope: string, ...others: Cell[]) => toldOf(open(blockOf('swing', { rope }), ...others));
    expect(said('cord', blockOf('rope'), blockOf('rope', {}, 'cord'))).toEqual([]);
    expect(said('twine', blockOf('rope'))).toEqual([
      'swing: swing takes “twine”, which is not a rope. Pick one of these: rope.',
    ]);
    expect(said('twine')).toEqual(['swing: swing takes “twine”, which is not a rope. Pick none.']);
  });
  it('stays with the first when a second comes', () => {
    const before = design(blockOf('swing'), blockOf('rope', { length: '20 m' }));
    const changes = keptLinks(before, blockOf('rope', {}, 'cord'), links);
    expect(changes).toEqual([{ change: 'cell', cell: blockOf('swing', { rope: 'rope' }) }]);
  });
  it('says of a number from where it is taken, and of a typed one nothing', () => {
    const takes = (live: Live) => (path: string) => live.compiled.names.find((each) => each.path === path)?.takes;
    const found = takes(open(blockOf('swing'), blockOf('rope', {}, 'cord'), blockOf('gust')));
    expect(['swing.drop', 'swing.most', 'swing.tug'].map(found)).toEqual(['cord.sag', 'gust.tug', undefined]);
    expect(takes(open(blockOf('swing', { drop: '1 m' }), blockOf('rope')))('swing.drop')).toBeUndefined();
    expect(takes(open(blockOf('swing')))('swing.drop')).toBeUndefined();
  });
  it('is told to the page with what it fills', () => {
    const fields = describeBlock(swing).fields;
    expect(fields.find(({ name }) => name === 'rope')).toMatchObject({ kind: 'link', role: 'rope', optional: true });
    expect(fields.find(({ name }) => name === 'drop')).toMatchObject({ taken: 'rope.sag', default: '1 m' });
    expect(describeBlock(gust).fields[0]).not.toHaveProperty('optional');
  });
});

const ids = (document: Document): readonly string[] => cellsOf(document).map(({ id }) => id);
const put = (document: Document, cell: Cell): readonly Change[] => [
  ...keptLinks(document, cell, links),
  { change: 'insert', sheet: document.sheets[0]!.id, at: 0, cell },
];

/** Pieces come, go and get other names, and texts change. */
function randomChanges(document: Document, random: Random): readonly Change[] {
  const cells = cellsOf(document).filter((cell): cell is BlockCell => cell.kind === 'model');
  const one = random.pick(cells);
  const kind = random.pick(['rope', 'gust', 'rope']);
  const id = `id_${kind}_${random.below(3)}`;
  switch (random.below(6)) {
    case 0:
      return one.id === 'id_swing' ? [] : [{ change: 'remove', id: one.id }];
    case 1:
    case 2:
      if (ids(document).includes(id)) return [];
      return put(document, { ...(blockOf(kind, {}, `${kind}_${random.below(1000)}`) as BlockCell), id });
    case 3: {
      const renamed = rename(document, one.name, `${one.name}_x`);
      return renamed.ok ? renamed.changes : [];
    }
    case 4:
      return [{ change: 'text', path: 'length', text: random.pick(['1 m', '20 m', '30 m', '40 m']) }];
    default: {
      const [field, texts] = {
        rope: ['length', ['', 'length', '1 m', '15 m']] as const,
        gust: ['force', ['', '45 N', '7 N']] as const,
        swing: random.pick([
          ['drop', ['', '', '0.5 m']],
          ['most', ['', '', '9 N']],
          ['rope', ['', 'twine']],
        ] as const),
      }[one.of as 'rope' | 'gust' | 'swing'];
      return [{ change: 'text', path: `${one.name}.${field}`, text: random.pick(texts) }];
    }
  }
}

it('gives what a full recompute gives after every edit, also when its piece comes or goes', () => {
  for (let seed = 0; seed < cases(30); seed++) {
    const random = randomFrom(seed);
    let document = design(blockOf('swing'));
    let live = openLive(document, library);
    for (let k = 0; k < 25; k++) {
      const changes = randomChanges(document, random);
      document = applyChanges(document, changes, { frozen: true }).document;
      const texts = changes.flatMap((change) =>
        change.change === 'text' ? [[change.path, change.text] as const] : [],
      );
      const onlyTexts = texts.length === changes.length;
      live = (onlyTexts ? setLive(live, texts, library) : editLive(live, document, library)).live;
      const fresh = openLive(document, library);
      const where = `seed ${seed}, edit ${k}: ${JSON.stringify(changes)}`;
      expect(live.compiled.document, where).toEqual(document);
      expect(live.compiled.program.shape, where).toBe(fresh.compiled.program.shape);
      expect([...live.state.m], where).toEqual([...fresh.state.m]);
      expect([...live.state.why], where).toEqual([...fresh.state.why]);
      expect(toldOf(live), where).toEqual(toldOf(fresh));
    }
  }
});
