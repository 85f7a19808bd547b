import { beforeEach, describe, expect, test } from 'vitest';
import { type Edited, openLive, setLive } from '../../../engine/sheet/live';
import {
  blockOf,
  documentOf,
  formula,
  library,
  part,
  parts,
  runs,
  smallDesign,
  tailStock,
  variable,
  variables,
} from './small';

beforeEach(() => runs.clear());

const pathsOf = ({ live, ran }: Edited): string[] => [...ran].map((k) => live.compiled.program.steps[k]!.path);

/** Paths of the steps that run when one text of a design of formula lines is set. */
function ranAfter(lines: Readonly<Record<string, string>>, path: string, text: string): string[] {
  const live = openLive(documentOf([formula('lines', lines)]), library);
  return pathsOf(setLive(live, [[path, text]], library));
}

describe('what runs after an edit of a value', () => {
  /*
   *     A
   *   / | \
   *  B  C  D
   *   \ | /
   *     E
   */
  test('a step that is reached three ways runs once', () => {
    const lines = { a: '1', b: 'a + 1', c: 'a + 2', d: 'a + 3', e: 'b + c + d' };
    expect(ranAfter(lines, 'a', '2')).toEqual(['b', 'c', 'd', 'e']);
  });

  /*
   *  A   B
   *  |   |
   *  C   D
   *   \ /
   *    E
   */
  test('the other branch stays still', () => {
    const lines = { a: '1', b: '2', c: 'a', d: 'b', e: 'c + d' };
    expect(ranAfter(lines, 'a', '5')).toEqual(['c', 'e']);
    expect(ranAfter(lines, 'b', '5')).toEqual(['d', 'e']);
  });

  /*
   *  E → D → C → B → A   (each line needs the next; the page lists them the wrong way round)
   */
  test('the order of computing follows the names, not the page', () => {
    const lines = { e: 'd', d: 'c', c: 'b', b: 'a', a: '1' };
    expect(ranAfter(lines, 'a', '7')).toEqual(['b', 'c', 'd', 'e']);
  });

  /*
   *    A
   *   / \
   *  B   C      D (needs nothing of A)
   */
  test('the same value again runs nothing', () => {
    const lines = { a: '12', b: 'a', c: 'a', d: '3' };
    expect(ranAfter(lines, 'a', ' 12.0 ')).toEqual([]);
    expect(ranAfter(lines, 'd', '4')).toEqual([]);
  });

  /*
   *  engine_station → motor ─┐
   *        └─ parts.engine → parts → lap
   *  cord_length → cord ─────┘
   */
  test('each block runs as often as it must', () => {
    const cells = [
      variables('set_these', variable('engine_station', 'mm', '-150'), variable('cord_length', 'm', '18')),
      blockOf('lap'),
      blockOf('cord', { length: 'cord_length' }),
      blockOf('motor', { station: 'engine_station' }),
      parts([
        part('engine', 'point', { mass: '210', x: 'engine_station' }),
        part('wing', 'point', { mass: '200', x: '90' }),
      ]),
    ];
    let edited: Edited = {
      live: openLive(documentOf(cells), library),
      ran: new Int32Array(),
      structure: false,
      unknown: [],
    };
    expect(Object.fromEntries(runs)).toEqual({ motor: 1, cord: 1, lap: 1 });
    edited = setLive(edited.live, [['cord_length', '17']], library);
    expect(pathsOf(edited)).toEqual(['cord.length', 'cord', 'lap']);
    expect(Object.fromEntries(runs)).toEqual({ motor: 1, cord: 2, lap: 2 });
    edited = setLive(edited.live, [['engine_station', '-140']], library);
    expect(pathsOf(edited).toSorted()).toEqual([
      'lap',
      'motor',
      'motor.station',
      'parts',
      'parts.engine',
      'parts.engine.x',
    ]);
    expect(Object.fromEntries(runs)).toEqual({ motor: 2, cord: 2, lap: 3 });
  });

  /*
   *  soft_wood ─→ soft.core ──→ soft ──┐
   *      └──────→ faced.core ┐         ├→ tail_stock → parts.stab → parts
   *  hard_wood ─→ faced.upper┴→ faced ─┘
   */
  test('a material moves the rows that use it and no other', () => {
    const own = [
      { table: 'materials', name: 'soft_wood', title: 'Soft wood', source: 'weighed', values: { density: '100' } },
    ];
    const rows = [
      part('stab', 'stack', { area: '3 dm²', stack: 'tail_stock', x: '480' }),
      part('wing', 'solid', { volume: '2400', material: 'soft_wood', x: '95' }),
      part('fin', 'sheet', { area: '90', thickness: '3', material: 'hard_wood', x: '500' }),
      part('engine', 'point', { mass: '210', x: '-150' }),
    ];
    const live = openLive(documentOf([tailStock(), parts(rows)], { rows: own }), library);
    const edited = setLive(live, [['soft_wood.density', '140 kg/m³']], library);
    expect(pathsOf(edited).toSorted()).toEqual([
      'parts',
      'parts.stab',
      'parts.wing',
      'tail_stock',
      'tail_stock.faced',
      'tail_stock.faced.core',
      'tail_stock.soft',
      'tail_stock.soft.core',
    ]);
  });
});

describe('an edit of structure', () => {
  test('keeps what it does not touch', () => {
    const live = openLive(smallDesign(), library);
    runs.clear();
    const edited = setLive(live, [['tip_weight', '10 g + 11 g']], library);
    expect(edited.structure).toBe(true);
    expect(pathsOf(edited).toSorted()).toEqual(
      [
        'tip_weight',
        'parts.tip.mass',
        'parts.tip',
        'parts',
        'lap',
        'reserve',
        'tail_share',
        'tight',
        'cg_band',
      ].toSorted(),
    );
    expect(Object.fromEntries(runs)).toEqual({ lap: 1 });
  });

  test('is told from an edit of value', () => {
    const live = openLive(smallDesign(), library);
    const structure = (path: string, text: string): boolean => setLive(live, [[path, text]], library).structure;
    expect(structure('tip_weight', '12')).toBe(false);
    expect(structure('tail_stock', 'faced')).toBe(false);
    expect(structure('lap.height', '')).toBe(false);
    expect(structure('parts.fin.weighed', '15 g')).toBe(false);
    expect(structure('cord.make', 'solid')).toBe(false);
    expect(structure('tip_weight', 'engine_station')).toBe(true);
    expect(structure('tail_stock', 'fased')).toBe(true);
    expect(structure('tip_weight', '')).toBe(true);
    expect(structure('motor.station', '-140')).toBe(true);
  });

  test('a line without a unit may change its value but not its dimension', () => {
    const live = openLive(documentOf([formula('lines', { reach: '12 mm', twice: '2 × reach' })]), library);
    expect(setLive(live, [['reach', '1 in']], library).structure).toBe(false);
    const edited = setLive(live, [['reach', '12 g']], library);
    expect(edited.structure).toBe(true);
    expect(edited.live.compiled.names.find((name) => name.path === 'twice')?.unit).toBe('g');
  });

  test('a path where no text can stand is given back', () => {
    const live = openLive(smallDesign(), library);
    expect(
      setLive(
        live,
        [
          ['nothing.here', '1'],
          ['tip_weight', '12'],
        ],
        library,
      ).unknown,
    ).toEqual(['nothing.here']);
  });
});

test('the shape stays for a value and changes with names, slots or steps', () => {
  const shapeOf = (path: string, text: string): string =>
    setLive(openLive(smallDesign(), library), [[path, text]], library).live.compiled.program.shape;
  const { shape } = openLive(smallDesign(), library).compiled.program;
  expect(openLive(smallDesign(), library).compiled.program.shape).toBe(shape);
  expect(shapeOf('tip_weight', '12')).toBe(shape);
  expect(shapeOf('tip_weight', '3 kg + 4 g')).not.toBe(shape);
  expect(openLive({ ...smallDesign(), units: 'inch_pound' }, library).compiled.program.shape).not.toBe(shape);
});

test('a number of the library that is only tried gives the program no name', () => {
  const { compiled } = openLive(smallDesign(), library);
  expect(compiled.read('cord_length', 'thick_cord.diameter')?.is).toBe('formula');
  expect(compiled.names.filter(({ slot }) => slot >= compiled.program.size)).toEqual([]);
  expect(compiled.names.length).toBe(openLive(smallDesign(), library).compiled.names.length);
});
