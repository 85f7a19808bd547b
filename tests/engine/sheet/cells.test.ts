import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { partsResults } from '../../../engine/blocks/parts/results';
import { FOLD_NAMES, STACK_NAMES } from '../../../engine/physics/index';
import { cellKinds, knownKinds } from '../../../engine/sheet/cells/index';
import { STACK_COLUMNS } from '../../../engine/sheet/cells/stack';
import { compile } from '../../../engine/sheet/compile';
import type { Cell, Document, Part } from '../../../engine/sheet/document';
import { PART_SHAPES } from '../../../engine/sheet/document';
import { baselineValues, openBaseline, openLive, setLive } from '../../../engine/sheet/live';
import { putText } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { faultsOf } from '../../../engine/sheet/sentences';
import { cellsOf } from '../../../engine/sheet/sheets';
import { applyChanges } from '../../../engine/sheet/transaction';
import { MOMENT } from '../../../engine/units/index';
import {
  blockOf,
  cordSet,
  documentOf,
  formula,
  library,
  part,
  parts,
  smallDesign,
  tailStock,
  variable,
  variables,
} from './small';

type Texts = Readonly<Record<string, string>>;

function reader(document: Document, texts: Texts = {}) {
  const { compiled, state } = setLive(openLive(document, library), Object.entries(texts), library).live;
  expect(faultsOf(compiled, state)).toEqual([]);
  const at = (path: string): number => {
    const slot = compiled.program.slotOf.get(path);
    if (slot === undefined) throw new Error(`nothing is called ${path}`);
    return state.m[slot]!;
  };
  const info = (path: string) => compiled.names.find((name) => name.path === path)!;
  return { at, info, compiled };
}
const ofCells = (...cells: Cell[]) => reader(documentOf(cells));

test('every kind of cell is one file, listed once', () => {
  const folder = new URL('../../../engine/sheet/cells/', import.meta.url);
  const files = readdirSync(folder).map((file) => file.replace(/\.ts$/, ''));
  expect(new Set(knownKinds).size).toBe(cellKinds.length);
  const inCode: Partial<Record<string, string>> = {
    model: 'block',
    trial_series: 'sweep',
    tolerances: 'spread',
    what_helps: 'levers',
    what_mends: 'mends',
    best_compromises: 'best',
  };
  for (const kind of knownKinds) expect(files).toContain(inCode[kind] ?? kind);
});

describe('a text is read', () => {
  const lines = (unit: string, text: string, more: Texts = {}) =>
    ofCells(variables('v', variable('x', unit, text)), formula('lines', more)).at('x');
  test('in its own unit when it is a bare number, in the unit that it says otherwise', () => {
    expect(lines('mm', '12')).toBe(0.012);
    expect(lines('mm', '-12')).toBe(-0.012);
    expect(lines('mm', '12 in')).toBeCloseTo(0.3048, 15);
    expect(lines('mm', '1 3/32 in')).toBeCloseTo(0.02778125, 15);
    expect(lines('°C', '20')).toBeCloseTo(293.15, 12);
    expect(lines('', '50 %')).toBe(0.5);
  });
  test('as a formula', () => {
    expect(lines('mm', '2 × y + 1 mm', { y: '3 mm' })).toBeCloseTo(0.007, 15);
    expect(lines('', 'y > 2 mm ? 1 : 2', { y: '3 mm' })).toBe(1);
  });
});

describe('a formula line', () => {
  test('is shown in the unit of the one name that it consists of, else in a usual one', () => {
    const { info } = reader(smallDesign(), { reserve: 'lap.pull × 2 m' });
    expect(info('reserve')).toMatchObject({ unit: 'N·m', kind: 'formula', settable: true });
    expect(info('reserve').dimension).toEqual(MOMENT);
    expect(reader(smallDesign(), { reserve: 'lap.pull' }).info('reserve').unit).toBe('N');
    expect(reader({ ...smallDesign(), units: 'inch_pound' }, { reserve: 'lap.pull' }).info('reserve').unit).toBe('lbf');
    expect(reader(smallDesign(), { reserve: 'cord_length' }).info('reserve').unit).toBe('m');
  });
  test('with a condition answers no or yes, and may be a condition again', () => {
    const { at, info } = ofCells(formula('lines', { a: '3 > 2', b: 'a ? 7 : 8', c: 'not a' }));
    expect([at('a'), at('b'), at('c')]).toEqual([1, 7, 0]);
    expect(info('a').options).toEqual(['no', 'yes']);
  });
});

describe('names', () => {
  test('are told once each, in the order of the page', () => {
    const { compiled } = reader(smallDesign());
    const paths = compiled.names.map((name) => name.path);
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths.slice(0, 3)).toEqual(['engine_station', 'engine_station.low', 'engine_station.high']);
    const order = cellsOf(compiled.document).map((cell) => cell.id);
    const places = compiled.names.filter((name) => name.cell !== '').map((name) => order.indexOf(name.cell));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
  });
  test('carry what a form and a listing need', () => {
    const { info } = reader(smallDesign());
    expect(info('lap.height')).toMatchObject({ kind: 'field', unit: 'm', range: [-5, 10], settable: true });
    expect(info('lap.pull')).toMatchObject({ kind: 'result', unit: 'N', usual: [10, 40], settable: false });
    expect(info('lap.shortfall').detail).toBe(true);
    expect(info('tail_stock')).toMatchObject({ kind: 'choice', options: ['soft', 'faced'], settable: true });
    expect(info('motor.thrust')).toMatchObject({ kind: 'curve', settable: false });
    expect(info('parts.fin.weighed')).toMatchObject({ kind: 'part', unit: 'g', settable: true });
    expect(info('parts.engine.mass').settable).toBe(true);
    expect(info('parts.fin.mass').settable).toBe(false);
    expect(info('hard_wood.density')).toMatchObject({ kind: 'library', cell: '', settable: false, doc: 'invented' });
  });
  test('show everything in the unit set of the design, and read a bare number in the unit of its field', () => {
    const { info } = reader({ ...smallDesign(), units: 'inch_pound' });
    expect(info('lap.pull').unit).toBe('lbf');
    expect(info('parts.mass').unit).toBe('oz');
    expect(info('lap.height')).toMatchObject({ unit: 'ft', bare: 'm' });
    expect(info('cord_length')).toMatchObject({ unit: 'ft', bare: 'm' });
    expect(reader(smallDesign()).info('lap.height').bare).toBeUndefined();
  });
  test('of materials take a place only when something names them', () => {
    const { compiled } = reader(smallDesign());
    expect(compiled.program.slotOf.has('odd_stuff.density')).toBe(false);
    const own = [
      { table: 'materials', name: 'hard_wood', title: 'Ours', source: 'weighed', values: { density: '650' } },
    ];
    const { at, info } = reader({ ...smallDesign(), rows: own });
    expect(at('hard_wood.density')).toBe(650);
    expect(info('hard_wood.density')).toMatchObject({ settable: true, doc: 'weighed' });
    expect(at('parts.fin.mass')).toBeCloseTo(0.009 * 0.003 * 650, 15);
  });
});

describe('finishes of the library', () => {
  test('are read like any other number, and take a place only when something names them', () => {
    const bare = reader(smallDesign());
    expect(bare.compiled.program.slotOf.has('varnish.areal_mass')).toBe(false);
    const row: Part = {
      name: 'panel',
      title: 'Panel',
      shape: 'point',
      fields: { mass: '10 g', x: '0 mm', coats_area: '0.5 m^2', coat: '2 × varnish.areal_mass' },
    };
    const { at, info } = reader(documentOf([parts([row])]));
    expect(at('parts.panel.mass')).toBeCloseTo(0.01 + 0.5 * 2 * 0.012, 15);
    expect(info('varnish.areal_mass')).toMatchObject({
      kind: 'library',
      unit: 'g/m²',
      settable: false,
      doc: 'invented',
    });
  });
});

describe('a part on the scale', () => {
  const horn = (fields: Record<string, string>): Part => ({ name: 'horn', title: 'Horn', shape: 'point', fields });
  test('says how far its estimate was off', () => {
    const { at, info } = reader(documentOf([parts([horn({ mass: '4 g', x: '0 mm', weighed: '4.6 g' })])]));
    expect(at('parts.horn.mass')).toBe(0.0046);
    expect(at('parts.horn.estimate')).toBe(0.004);
    expect(at('parts.horn.difference')).toBeCloseTo(0.0006, 15);
    expect(info('parts.horn.difference')).toMatchObject({ kind: 'part', unit: 'g', settable: false, detail: true });
  });
  test('has no such number before', () => {
    expect(reader(documentOf([parts([horn({ mass: '4 g', x: '0 mm' })])])).at('parts.horn.difference')).toBeNaN();
  });
});

describe('one path for a field and a result of the same name', () => {
  test('reads the field where something always stands in it, so that fields may read each other', () => {
    const { at, compiled } = reader(smallDesign());
    expect(at('cord.length')).toBe(18.3);
    expect(compiled.program.slotOf.get('cord.length')).toBe(compiled.program.inputs.get('cord.length'));
    expect(compiled.names.filter((name) => name.path === 'cord.length')).toHaveLength(1);
  });
  test('reads the field where the result is a curve', () => {
    const odd = {
      ...library.blocks.find((block) => block.kind === 'motor')!,
      kind: 'odd',
      fields: { thrust: { ...told, default: Number.NaN, range: [0, 9] as const, basis: 'A guess.' } },
      results: { thrust: { ...told, curve: 'airspeed' as const } },
      reasons: {},
      run: () => undefined,
    };
    const { compiled } = openLive(documentOf([blockOf('odd', { thrust: '3' })]), { ...library, blocks: [odd] });
    expect(compiled.names).toMatchObject([{ path: 'odd.thrust', kind: 'field', settable: true }]);
    expect(compiled.program.start[compiled.program.slotOf.get('odd.thrust')!]).toBe(3);
  });
  test('reads the result where the block estimates a blank field, and is set through the field', () => {
    const guess = {
      ...library.blocks.find((block) => block.kind === 'cord')!,
      kind: 'guess',
      fields: { drag: { ...told, default: Number.NaN, range: [0, 9] as const, basis: 'A guess.' } },
      results: { drag: told },
      reasons: {},
      run(m: Float64Array, f: { drag: number }, r: { drag: number }, i: number) {
        m[r.drag + i] = Number.isNaN(m[f.drag + i]!) ? 4 : m[f.drag + i]!;
        return undefined;
      },
    };
    const blocks = { ...library, blocks: [guess] };
    let live = openLive(documentOf([blockOf('guess'), formula('lines', { a: 'guess.drag + 1' })]), blocks);
    const at = (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
    expect([at('guess.drag'), at('a')]).toEqual([4, 5]);
    expect(live.compiled.names.filter((name) => name.path === 'guess.drag')).toMatchObject([
      { kind: 'result', settable: true, range: [0, 9] },
    ]);
    ({ live } = setLive(live, [['guess.drag', '7']], blocks));
    expect([at('guess.drag'), at('a')]).toEqual([7, 8]);
    ({ live } = setLive(live, [['guess.drag', '']], blocks));
    expect([at('guess.drag'), at('a')]).toEqual([4, 5]);
  });
});
const told = {
  dimension: { length: 0, mass: 0, time: 0, temperature: 0, current: 0 },
  unit: '',
  symbol: '',
  title: '',
  doc: '',
};

describe('a choice', () => {
  test('of stacks gives what its layers add up to', () => {
    const soft = reader(smallDesign());
    expect(soft.at('tail_stock.areal_mass')).toBeCloseTo(0.5, 15);
    expect(soft.at('tail_stock.thickness')).toBe(0.005);
    // One even layer: E t³ / 12.
    expect(soft.at('tail_stock.stiffness')).toBeCloseTo((3e9 * 0.005 ** 3) / 12, 9);
    const faced = reader(smallDesign(), { tail_stock: 'faced' });
    // 600 × 2 × 0.5 mm + 40 g/m² + 100 × 3 mm.
    expect(faced.at('tail_stock.areal_mass')).toBeCloseTo(0.94, 15);
    expect(faced.at('tail_stock.thickness')).toBeCloseTo(0.004, 15);
    // Even about the middle: E_f (t³ − c³) / 12 + E_c c³ / 12.
    const [t, c] = [0.004, 0.003];
    expect(faced.at('tail_stock.stiffness')).toBeCloseTo((1e10 * (t ** 3 - c ** 3) + 3e9 * c ** 3) / 12, 9);
    expect(faced.at('tail_stock')).toBe(1);
  });
  test('shows what the options that are not picked would give', () => {
    expect(reader(smallDesign()).at('tail_stock.faced.areal_mass')).toBeCloseTo(0.94, 15);
  });
  test('of a material whose modulus is not known weighs something all the same', () => {
    const { at } = reader(smallDesign(), { 'tail_stock.soft.core.material': 'odd_stuff' });
    expect(at('tail_stock.areal_mass')).toBeCloseTo(0.25, 15);
    expect(at('tail_stock.stiffness')).toBeNaN();
    expect(at('parts.stab.mass')).toBeCloseTo(0.03 * 0.25, 15);
  });
  test('of numbers gives those of the picked option', () => {
    const at = (text: string) => {
      const read = reader(smallDesign(), { cord_set: text });
      return [read.at('cord_set.diameter'), read.at('cord_set.strength')];
    };
    expect(at('thin')).toEqual([0.0003, 120]);
    expect(at('thick')).toEqual([0.00045000000000000004, 260]);
    expect(at('cord_length > 20 m ? thick : thin')).toEqual([0.0003, 120]);
  });
  test('may be a material', () => {
    const wood: Cell = {
      ...(cordSet('b') as Extract<Cell, { kind: 'choice' }>),
      columns: [{ name: 'density', unit: 'kg/m³', title: 'Density' }],
      options: [
        { name: 'a', title: '', pattern: 'plain', values: { density: '100' } },
        { name: 'b', title: '', pattern: 'plain', values: { density: 'hard_wood.density / 2' } },
      ],
    };
    const rows = [part('block', 'solid', { volume: '1000', material: 'cord_set', x: '0' })];
    expect(ofCells(wood, parts(rows)).at('parts.block.mass')).toBeCloseTo(0.3, 15);
  });
  test('an option of a stack choice may be named by a part itself', () => {
    const rows = [part('stab', 'stack', { area: '1 dm²', stack: 'tail_stock.faced', x: '0' })];
    expect(ofCells(tailStock('soft'), parts(rows)).at('parts.stab.mass')).toBeCloseTo(0.0094, 15);
  });
});

describe('an option field', () => {
  const make = (text: string, ...cells: Cell[]) => ofCells(blockOf('cord', { make: text }), ...cells).at('cord.make');
  const makes = (...names: string[]): Cell => ({
    ...(cordSet(names[0]) as Extract<Cell, { kind: 'choice' }>),
    name: 'makes',
    columns: [],
    options: names.map((name) => ({ name, title: '', pattern: 'plain' as const })),
  });
  test('takes the name of an option, also one that is no name in formulas', () => {
    expect([make(''), make('solid'), make('two-ply')]).toEqual([0, 1, 2]);
  });
  test('takes a formula', () => {
    expect(make('2 > 1 ? solid : stranded')).toBe(1);
  });
  test('takes a choice of the same options, of some of them, and in another order', () => {
    expect(make('makes', makes('solid', 'stranded'))).toBe(1);
    expect(make('makes', makes('two-ply', 'solid', 'stranded'))).toBe(2);
    expect(make('makes', makes('stranded', 'solid', 'two-ply'))).toBe(0);
  });
});

describe('a part', () => {
  const massOf = (shape: Part['shape'], fields: Texts): number =>
    ofCells(tailStock(), parts([part('it', shape, { x: '0', ...fields })])).at('parts.it.mass');
  test('weighs what its shape and material say', () => {
    expect(massOf('point', { mass: '12 g' })).toBe(0.012);
    expect(massOf('sheet', { area: '2 dm²', thickness: '3 mm', material: 'soft_wood' })).toBeCloseTo(0.006, 15);
    expect(massOf('stack', { area: '2 dm²', stack: 'tail_stock' })).toBeCloseTo(0.01, 15);
    const rod = massOf('rod', { length: '1 m', diameter: '4 mm', material: 'hard_wood' });
    expect(rod).toBeCloseTo((Math.PI / 4) * 0.004 ** 2 * 600, 15);
    expect(massOf('solid', { volume: '50 cm³', material: 'hard_wood' })).toBeCloseTo(0.03, 15);
  });
  test('weighs its finish too', () => {
    expect(massOf('point', { mass: '12 g', coats_area: '1 dm²', coat: '100 g/m²' })).toBeCloseTo(0.013, 15);
  });
  test('may be a cut-out', () => {
    const rows = [
      part('wing', 'solid', { volume: '1000', material: 'soft_wood', x: '100' }),
      part('hole', 'solid', { volume: '-200', material: 'soft_wood', x: '50' }),
    ];
    const { at } = ofCells(parts(rows));
    expect(at('parts.mass')).toBeCloseTo(0.08, 15);
    expect(at('parts.x')).toBeCloseTo((0.1 * 0.1 - 0.02 * 0.05) / 0.08, 14);
  });
  test('on the scale counts by what the scale says, and keeps its estimate', () => {
    const { at } = reader(smallDesign(), { 'parts.fin.weighed': '20 g' });
    expect(at('parts.fin.mass')).toBe(0.02);
    expect(at('parts.fin.estimate')).toBeCloseTo(0.0162, 15);
    expect(at('parts.weighed_share')).toBeCloseTo(0.02 / at('parts.mass_empty'), 14);
  });
  test('moves the balance by its share, and all shares add up to nothing', () => {
    const { at } = reader(smallDesign());
    const names = ['engine', 'wing', 'stab', 'fin', 'tip', 'tank'];
    const sum = (what: string) => names.reduce((total, name) => total + at(`parts.${name}.${what}`), 0);
    expect(sum('moment')).toBeCloseTo(0, 15);
    expect(sum('moment_share')).toBeCloseTo(0, 14);
    expect(at('parts.wing.moment')).toBeCloseTo(at('parts.wing.mass') * (0.095 - at('parts.x')), 15);
  });
  test('that is fuel scales with the share on board', () => {
    const dry = reader(smallDesign(), { 'parts.fuel': '0' });
    const full = reader(smallDesign(), { 'parts.fuel': '1' });
    expect(full.at('parts.mass') - dry.at('parts.mass')).toBeCloseTo(0.04, 15);
    expect(dry.at('parts.mass')).toBe(full.at('parts.mass_empty'));
    expect(full.at('parts.x')).toBe(dry.at('parts.x_full'));
    expect(reader(smallDesign(), { 'parts.fuel': '' }).at('parts.x')).toBe(dry.at('parts.x_half'));
  });
  test('has the mass and CG of statics', () => {
    const { at } = ofCells(
      parts([
        part('a', 'point', { mass: '100', x: '-100', y: '10' }),
        part('b', 'point', { mass: '300', x: '100', z: '-20' }),
      ]),
    );
    expect(at('parts.mass')).toBeCloseTo(0.4, 15);
    expect([at('parts.x'), at('parts.y'), at('parts.z')]).toEqual(
      [0.05, 0.0025, -0.015].map((v) => expect.closeTo(v, 15)),
    );
  });
  test('is of a shape that the physics knows', () => {
    for (const shape of PART_SHAPES)
      expect(() => compile(documentOf([parts([part('a', shape, {})])]), library)).not.toThrow();
  });
});

test('folds are named in the order in which physics writes them', () => {
  expect(Object.keys(partsResults)).toEqual([...FOLD_NAMES]);
  expect(STACK_COLUMNS.map((column) => column.name)).toEqual([...STACK_NAMES]);
});

describe('a check', () => {
  test('reads a bare limit in the unit of what it watches', () => {
    const { at } = reader(smallDesign());
    expect([at('cg_band.low'), at('cg_band.high')]).toEqual([0.038, 0.055]);
    expect(at('cg_band')).toBe(at('parts.x'));
    // Never in the unit set of the reader, which would change the design.
    expect(reader({ ...smallDesign(), units: 'inch_pound' }).at('cg_band.high')).toBe(0.055);
  });
  test('says numbers in its reasons, which follow a new name and can be typed over', () => {
    const design = smallDesign();
    const below = 'nose-heavy by {38 mm - parts.x}, with {tip_weight}';
    const sheets = design.sheets.map((sheet) => ({
      ...sheet,
      pieces: sheet.pieces.map((cell) => (cell.name === 'cg_band' ? { ...cell, below } : cell)),
    }));
    const { at } = reader({ ...design, sheets });
    expect(at('cg_band.below1')).toBeCloseTo(0.038 - at('parts.x'), 12);
    expect(at('cg_band.below2')).toBe(at('tip_weight'));
    const renamed = rename({ ...design, sheets }, 'tip_weight', 'lead');
    if (!renamed.ok) throw new Error(renamed.message);
    const after = applyChanges({ ...design, sheets }, renamed.changes).document;
    expect(cellsOf(after).find((cell) => cell.name === 'cg_band')).toMatchObject({
      below: 'nose-heavy by {38 mm - parts.x}, with {lead}',
    });
    const typed = putText(after, 'cg_band.below2', 'lead + 1 g')!;
    expect(cellsOf(typed).find((cell) => cell.name === 'cg_band')).toMatchObject({
      below: 'nose-heavy by {38 mm - parts.x}, with {lead + 1 g}',
    });
    expect(putText(after, 'cg_band.below2', 'a } b')).toBeUndefined();
  });
  test('may have one limit only', () => {
    expect(reader(smallDesign(), { 'cg_band.low': '' }).at('cg_band.low')).toBeNaN();
  });
});

describe('the baseline', () => {
  test('is computed by the same program, in the slots of the present design', () => {
    const live = openLive({ ...smallDesign(), baseline: { tip_weight: '2 × 15 g', tail_stock: 'faced' } }, library);
    const values = baselineValues(live, openBaseline(live, library)!);
    const other = reader(smallDesign(), { tip_weight: '2 × 15 g', tail_stock: 'faced' });
    for (const { path, slot } of live.compiled.names) expect(values[slot], path).toBe(other.at(path));
  });
  test('is not there where the document has none', () => {
    expect(openBaseline(openLive(smallDesign(), library), library)).toBeUndefined();
  });
});

test('a link may be a block of any kind with the role', () => {
  const { at } = reader(smallDesign());
  // 8 N less a tenth, less 0.1 × 10 m/s at the third knot; less a tenth of the drag number.
  expect(at('lap.speed')).toBeCloseTo(10 + (8 - 0.8 - 1) - 0.1 * 18.3, 12);
});
