import { describe, expect, test } from 'vitest';
import type { Cell, Document, SweepCell } from '../../../engine/sheet/document';
import { openLive, setLive } from '../../../engine/sheet/live';
import { faultsOf } from '../../../engine/sheet/sentences';
import { cellsOf } from '../../../engine/sheet/sheets';
import {
  blockOf,
  documentOf,
  formula,
  library,
  part,
  parts,
  smallDesign,
  variable,
  variables,
  withCell,
} from './small';

type Texts = Readonly<Record<string, string>>;

/** "path: sentence" of everything that is at fault (not of what waits) once these texts are set. */
function faultsAfter(document: Document, texts: Texts = {}): string[] {
  const { compiled, state } = setLive(openLive(document, library), Object.entries(texts), library).live;
  const faults = faultsOf(compiled, state).filter((fault) => fault.state === 'fault');
  return faults.map((fault) => `${fault.path}: ${fault.message}`);
}

const wrongWith = (texts: Texts): string[] => faultsAfter(smallDesign(), texts);
const ofLines = (texts: Texts): string[] => faultsAfter(documentOf([formula('lines', texts)]));
const ofCells = (...cells: Cell[]): string[] => faultsAfter(documentOf(cells));
const ofVariables = (...rows: Parameters<typeof variables>[1][]): string[] => ofCells(variables('v', ...rows));

describe('a text', () => {
  test('of another dimension', () => {
    expect(wrongWith({ engine_station: '12 kg' })).toEqual([
      'engine_station: 12\u00a0kg is a mass; here a length is wanted. Write a length, such as 10\u00a0mm.',
    ]);
  });
  test('that cannot be read', () => {
    expect(wrongWith({ tip_weight: '3 +' })).toEqual([
      'tip_weight: A value is missing at the end, behind +. Write a value behind +, or leave it out.',
    ]);
  });
  test('that names nothing', () => {
    expect(wrongWith({ tip_weight: 'tip_wieght' })).toEqual([
      'tip_weight: Nothing is called tip_wieght. Did you mean tip_weight?',
    ]);
  });
  test('that adds unlike things, where anything is wanted: the cause is said, not a ring', () => {
    expect(ofLines({ a: '20 N', b: 'a + 2 m' })).toEqual([
      'b: 2\u00a0m is a length, a is a force: they cannot be added. Make both a force, or both a length.',
    ]);
  });
  test('that names a curve', () => {
    const cells = [blockOf('motor'), formula('lines', { a: 'motor.thrust' })];
    expect(ofCells(...cells)).toEqual([
      'a: The thrust of motor is a curve over airspeed, which a formula cannot read. Name a single number.',
    ]);
  });
  test('that is blank', () => {
    expect(wrongWith({ tip_weight: ' ' })).toEqual([
      'tip_weight: The tip_weight is blank. Type a mass, such as “10\u00a0g”.',
    ]);
    expect(ofLines({ a: '' })).toEqual(['a: a is blank. Write a formula or a value.']);
    expect(wrongWith({ cg_band: '' })).toEqual([
      'cg_band: CG has nothing to watch. Write the name of a result in it, such as “flight.pull”.',
    ]);
  });
  test('at its place in the text', () => {
    const { compiled, state } = openLive(documentOf([formula('lines', { a: '1 + gone' })]), library);
    const [fault] = faultsOf(compiled, state);
    expect(fault).toMatchObject({ cell: 'id_lines', path: 'a', state: 'fault', from: 4, to: 8 });
  });
});

describe('a value', () => {
  test('outside its range, in the units of the design', () => {
    const said = [
      'lap.height: The height of lap is 12\u00a0m. Allowed: −5\u00a0m to 10\u00a0m. Type a value within that.',
    ];
    expect(wrongWith({ 'lap.height': '12 m' })).toEqual(said);
    expect(wrongWith({ 'lap.height': 'cord_length - 6.3 m' })).toEqual(said);
    expect(faultsAfter({ ...smallDesign(), units: 'inch_pound' }, { 'lap.height': '12' })).toEqual([
      'lap.height: The height of lap is 39.37\u00a0ft. Allowed: −16.40\u00a0ft to 32.81\u00a0ft. Type a value within that.',
    ]);
  });
  test('that arithmetic does not give', () => {
    expect(ofLines({ a: '0', b: '1 / a' })).toEqual([
      'b: b has no value: its arithmetic divides by zero or takes a root or logarithm that does not exist for these numbers. Change the formula or the numbers in it.',
    ]);
    expect(wrongWith({ reserve: 'parts.fin.weighed' })).toEqual([
      'reserve: reserve has no value, because the weighed mass of fin has none: nothing is typed there or nothing is known. Give it a value or leave it out of the formula.',
    ]);
  });
});

describe('a ring', () => {
  test('of one', () => {
    expect(ofLines({ a: 'a + 1' })).toEqual([
      'a: a hangs on itself: its own text names it. Type a number, or name something else.',
    ]);
  });
  test('of three, and what hangs on it waits', () => {
    expect(ofLines({ a: 'b', b: 'c', c: 'a', d: 'a' })).toEqual([
      'a: a hangs on itself: it needs b, which needs c, which needs a. Type a number in one of them.',
      'b: b hangs on itself: it needs c, which needs a, which needs b. Type a number in one of them.',
      'c: c hangs on itself: it needs a, which needs b, which needs c. Type a number in one of them.',
    ]);
  });
  test('through a table of parts', () => {
    expect(wrongWith({ tip_weight: '0.1 × parts.mass' })).toEqual([
      'tip_weight: The tip_weight hangs on itself: it needs parts, which needs tip, which needs the tip of parts, which needs the tip_weight. Type a number in one of them.',
      'parts.tip.mass: The tip of parts hangs on itself: it needs the tip_weight, which needs parts, which needs tip, which needs the tip of parts. Type a number in one of them.',
    ]);
  });
});

describe('a block', () => {
  test('with a reason of its own, filled with values in the unit set of the reader', () => {
    expect(wrongWith({ 'motor.pull': '1 N' })).toEqual([
      'lap: Too little thrust: 1.93\u00a0N are missing on 18.3\u00a0m of cord at 1\u00a0m. Shorten the cord.',
    ]);
    expect(faultsAfter({ ...smallDesign(), units: 'inch_pound' }, { 'motor.pull': '1 N' })).toEqual([
      'lap: Too little thrust: 0.43\u00a0lbf are missing on 60.0\u00a0ft of cord at 3.28\u00a0ft. Shorten the cord.',
    ]);
  });
  test('whose equations refuse', () => {
    expect(wrongWith({ 'lap.height': '3 m' })).toEqual([
      'lap: lap has no answer: height is 3; it must not be 3. Its equations do not reach that far; take back the last change or type other values.',
    ]);
  });
  test('that lacks another', () => {
    expect(ofCells(blockOf('lap'))).toEqual(['lap: lap needs an engine, and the design has none. Add an engine.']);
    expect(ofCells(blockOf('lap'), blockOf('motor'))).toEqual([
      'lap: lap needs a cord, and the design has none. Add a cord.',
    ]);
    expect(ofCells(blockOf('lap'), blockOf('motor'), blockOf('cord'))).toEqual([
      'lap: lap needs a table of weight and balance, and the design has none. Add a table of weight and balance.',
    ]);
  });
  test('with two to choose from, until one is named', () => {
    const two = documentOf([...cellsOf(smallDesign()), blockOf('cord', {}, 'spare')]);
    expect(faultsAfter(two)).toEqual([
      'lap: lap needs a cord, and the design has 2: cord, spare. Remove all but one, or pick the one that is meant.',
    ]);
    expect(faultsAfter(two, { 'lap.cord': 'spare' })).toEqual([]);
    expect(faultsAfter(two, { 'lap.cord': 'motor' })).toEqual([
      'lap: lap takes “motor”, which is not a cord. Pick one of these: cord, spare.',
    ]);
  });
  test('of no kind, or with no such field', () => {
    expect(ofCells(blockOf('cor', {}, 'cord'))).toEqual([
      'cord: Nothing in the model is called “cor”. There is motor, cord, lap. Did you mean cord?',
    ]);
    expect(ofCells(blockOf('cord', { lenght: '3' }))).toEqual([
      'cord.lenght: cord has nothing called “lenght”. It has length, make. Did you mean length?',
    ]);
  });
  test('with an option that it does not have', () => {
    expect(wrongWith({ 'cord.make': 'braided' })).toEqual([
      'cord.make: Nothing is called braided. Write one of stranded, solid, two-ply.',
    ]);
  });
});

describe('a name', () => {
  test('given twice', () => {
    expect(ofVariables(variable('a', 'm', '1'), variable('a', 'm', '2'))).toEqual([
      'a: Two things are called “a”. Give one of them another name.',
    ]);
    expect(
      ofCells(parts([part('mass', 'point', { mass: '3', x: '0' }), part('b', 'point', { mass: '3', x: '0' })])),
    ).toEqual(['parts.mass: Two things are called “parts.mass”. Give one of them another name.']);
  });
  test('that is none', () => {
    expect(ofVariables(variable('2nd', 'm', '1'), variable('', 'm', '2'))).toEqual([
      '2nd: “2nd” cannot be a name. A name starts with a letter and has letters, digits and _ only.',
      ': Something here has no name. Give it one.',
    ]);
  });
  test('that formulas keep for themselves', () => {
    expect(ofVariables(variable('sin', 'm', '2'), variable('pi', '', '2'), variable('and', '', '1'))).toEqual([
      'sin: “sin” cannot be a name: it means something else in formulas. Choose another.',
      'pi: “pi” cannot be a name: it means something else in formulas. Choose another.',
      'and: “and” cannot be a name: it means something else in formulas. Choose another.',
    ]);
  });
  test('that is too long', () => {
    const long = 'a'.repeat(61);
    expect(ofVariables(variable(long, '', '1'))).toEqual([
      `${long}: The name “${long}” has 61 characters. At most 60 are allowed.`,
    ]);
  });
  test('of a unit that is none', () => {
    expect(ofVariables(variable('a', 'furlong', '1'))).toEqual([
      'a: a has the unit “furlong”, which is not a unit. Give it one such as mm, g or m/s.',
    ]);
  });
});

describe('a part', () => {
  const ofPart = (...row: Parameters<typeof part>): string[] =>
    ofCells(parts([part('sound', 'point', { mass: '100', x: '0' }), part(...row)]));

  test('that lacks what its shape needs', () => {
    expect(ofPart('nose', 'point', {})).toEqual([
      'parts.nose.mass: nose needs its mass. Type it, such as “12\u00a0g”.',
      'parts.nose.x: nose needs its station. Type it, such as “45\u00a0mm”.',
    ]);
    expect(ofPart('fin', 'sheet', { area: '1', thickness: '1', x: '0' })).toEqual([
      'parts.fin.material: fin needs its material. Pick one.',
    ]);
  });
  test('of a material or stack that is not there', () => {
    expect(ofPart('spar', 'rod', { length: '1', diameter: '1', material: 'hard_wod', x: '0' })).toEqual([
      'parts.spar.material: spar is made of “hard_wod”: there is no material of that name. Did you mean hard_wood?',
    ]);
    expect(ofPart('stab', 'stack', { area: '1', stack: 'none', x: '0' })).toEqual([
      'parts.stab.stack: stab is made of “none”: there is no stack of that name.',
    ]);
  });
  test('of a size that cannot be', () => {
    expect(ofPart('fin', 'sheet', { area: '1', thickness: '-1 mm', material: 'hard_wood', x: '20 m' })).toEqual([
      'parts.fin.thickness: The thickness of fin is −1\u00a0mm. Allowed: at least 0\u00a0mm. Type a value within that.',
    ]);
    expect(ofPart('fin', 'sheet', { area: '1', thickness: '1 mm', material: 'hard_wood', x: '20 m' })).toEqual([
      'parts.fin.x: The station of fin is 20\u202f000\u00a0mm. Allowed: −10\u202f000\u00a0mm to 10\u202f000\u00a0mm. Type a value within that.',
    ]);
  });
  test('with a field that no part has', () => {
    expect(ofPart('fin', 'point', { mass: '3', x: '0', weihed: '3' })).toEqual([
      'parts.fin.weihed: fin has nothing called “weihed”. It has mass, count, x, y, z, weighed, size_x, size_y, size_z, coats_area, coat, mass_tolerance, station_tolerance. Did you mean weighed?',
    ]);
  });
  test('of stuff whose weight is not known', () => {
    const rows = [
      { table: 'materials', name: 'foam', title: 'Foam', source: 'weighed', values: { density: '100 kg/m³' } },
    ];
    const solid = parts([part('a', 'solid', { volume: '3', material: 'foam', x: '0' })]);
    expect(faultsAfter(documentOf([solid], { rows }), { 'foam.density': '' })).toEqual([
      'foam.density: The density of Foam is blank. Type a density, such as “10\u00a0kg/m³”.',
    ]);
    expect(faultsAfter(documentOf([solid], { rows }), { 'foam.density': '-3' })).toEqual([
      'parts.a.material: The density of what a is made of is −3\u00a0kg/m³. Allowed: at least 0\u00a0kg/m³. Type a value within that.',
    ]);
  });
  test('list that is no body', () => {
    expect(ofCells(parts([]))).toEqual([
      'parts: The parts together weigh nothing. Give at least one part a mass; cut-outs may not outweigh the rest.',
    ]);
    expect(wrongWith({ 'parts.fuel': '2' })).toEqual([
      'parts.fuel: The fuel on board of parts is 2. Allowed: 0 to 1. Type a value within that.',
    ]);
  });
});

describe('a choice', () => {
  test('with nothing or something else picked', () => {
    expect(wrongWith({ tail_stock: '' })).toEqual([
      'tail_stock: Nothing is picked for Tail stock. Pick one of Soft, Faced.',
    ]);
    expect(wrongWith({ tail_stock: 'fased' })).toEqual(['tail_stock: Nothing is called fased. Did you mean faced?']);
  });
  test('of layers that cannot be', () => {
    expect(wrongWith({ 'tail_stock.soft.core': '-1 mm' })).toEqual([
      'tail_stock.soft.core: The thickness of core of Soft is −1\u00a0mm. Allowed: at least 0\u00a0mm. Type a value within that.',
    ]);
    expect(wrongWith({ 'tail_stock.faced.upper.material': 'no_wood' })).toEqual([
      'tail_stock.faced.upper.material: Faced is made of “no_wood”: there is no material of that name.',
    ]);
  });
  test('with nothing to choose from', () => {
    const of = 'numbers' as const;
    const empty: Cell = { kind: 'choice', id: 'c', name: 'c', title: '', of, columns: [], options: [], text: '' };
    expect(ofCells(empty)).toEqual(['c: c has no options. Give it at least one.']);
    const odd: Cell = {
      ...empty,
      text: 'b',
      options: [
        { name: 'a b', title: '', pattern: 'plain' },
        { name: 'b', title: '', pattern: 'plain' },
      ],
    };
    expect(ofCells(odd)).toEqual([
      'c.a b: “a b” cannot be the name of an option. A name starts with a letter and has letters, digits, _ and - only.',
    ]);
    const hollow: Cell = {
      ...empty,
      of: 'stack',
      text: 'b',
      options: [{ name: 'b', title: '', pattern: 'plain', layers: [] }],
    };
    expect(ofCells(hollow)).toEqual(['c.b: c.b has no layers. Give it at least one.']);
  });
  test('whose option lacks a number', () => {
    expect(wrongWith({ 'cord_set.thin.strength': '' })).toEqual([
      'cord_set.thin.strength: The strength of Thin is blank. Type a force, such as “10\u00a0N”.',
    ]);
  });
});

describe('a sweep', () => {
  const sweep = (more: object): string[] =>
    faultsAfter(
      withCell(smallDesign(), {
        kind: 'trial_series',
        id: 'id_cg_sweep',
        name: 'cg_sweep',
        title: '',
        axes: [
          { of: 'engine_station', low: '', high: '', count: 5 },
          { of: 'tail_stock', low: '', high: '', count: 0 },
        ],
        wanted: ['parts.x'],
        ...more,
      } as Cell),
    );
  const axis = (of: string, more: object = {}) => ({ of, low: '', high: '', count: 5, ...more });

  test('is sound as the design has it', () => expect(sweep({})).toEqual([]));
  test('along too many axes or none', () => {
    expect(sweep({ axes: [] })[0]).toBe('cg_sweep: cg_sweep has 0 axes. One to 4 are allowed.');
    const many = Array.from({ length: 5 }, () => axis('tip_weight'));
    expect(sweep({ axes: many })[0]).toBe('cg_sweep: cg_sweep has 5 axes. One to 4 are allowed.');
  });
  test('along what cannot be set', () => {
    expect(sweep({ axes: [axis('tail_stok')] })[0]).toBe(
      'cg_sweep: cg_sweep runs along “tail_stok”: nothing has that name. Did you mean Tail stock?',
    );
    expect(sweep({ axes: [axis('parts.x')] })[0]).toBe(
      'cg_sweep: cg_sweep runs along the CG station of parts. An axis is a variable, a choice or something typed in the model: make it a variable and run along that.',
    );
  });
  test('from and to nowhere', () => {
    expect(sweep({ axes: [axis('lap.height', { high: '3 m' })] })[0]).toBe(
      'cg_sweep: cg_sweep has no least value for the height of lap. Type one: only a variable has limits of its own.',
    );
    expect(sweep({ axes: [axis('lap.height', { low: '3 m' })] })[0]).toBe(
      'cg_sweep: cg_sweep has no greatest value for the height of lap. Type one: only a variable has limits of its own.',
    );
    expect(sweep({ axes: [axis('tip_weight', { low: '3 m' })] })[0]).toBe(
      'cg_sweep.axis1.low: 3\u00a0m is a length; here a mass is wanted. Write a mass, such as 10\u00a0g.',
    );
  });
  test('of too few points, or of options that are not there', () => {
    expect(sweep({ axes: [axis('tip_weight', { count: 1 })] })[0]).toBe(
      'cg_sweep: cg_sweep asks for 1 values of the tip_weight. 2 to 1001 are allowed.',
    );
    expect(sweep({ axes: [axis('tail_stock', { options: ['hard'] })] })[0]).toBe(
      'cg_sweep: cg_sweep asks for “hard” of Tail stock. Its options are Soft, Faced.',
    );
  });
  test('for results that are none', () => {
    expect(sweep({ wanted: ['parts.xx'] })[0]).toBe(
      'cg_sweep: cg_sweep asks for “parts.xx”: nothing has that name. Did you mean the CG station of parts?',
    );
    expect(sweep({ wanted: ['motor.thrust'] })[0]).toBe(
      'cg_sweep: cg_sweep asks for the thrust of motor, which is a curve. Take a single number.',
    );
    expect(sweep({ wanted: [] })[0]).toBe(
      'cg_sweep: cg_sweep has no results to show. Add one under “Results asked for”.',
    );
  });
});

describe('a chart', () => {
  const chart = (more: object): string[] => {
    const cell = cellsOf(smallDesign()).find((each) => each.name === 'cg_chart')!;
    return faultsAfter(withCell(smallDesign(), { ...cell, ...more } as Cell));
  };
  test('of what its sweep does not have', () => {
    expect(chart({ series: 'cg_swep' })).toEqual([
      'cg_chart: CG shows the trial series “cg_swep”: there is nothing of that name. The trial series are CG. Did you mean CG?',
    ]);
    expect(chart({ across: 'tip_weight' })).toEqual([
      'cg_chart: CG needs the tip_weight as an axis of CG. The axes of CG are Tail stock, the engine_station.',
    ]);
    expect(chart({ up: ['parts.mass'] })).toEqual([
      'cg_chart: CG shows the all-up weight of parts, which CG does not compute. It computes the CG station of parts, the pull of lap.',
    ]);
    expect(chart({ up: [] })).toEqual(['cg_chart: CG shows nothing. Take at least one result of CG.']);
    expect(chart({ series: '' })).toEqual(['cg_chart: CG has no trial series to show. The trial series are CG.']);
    const alone = cellsOf(smallDesign()).find((each) => each.name === 'cg_chart')!;
    expect(ofCells(alone)).toEqual([
      'cg_chart: CG shows the trial series “cg_sweep”: there is nothing of that name. There is none yet; add one.',
    ]);
  });
  test('over two axes that are not two, or not of numbers', () => {
    const two = { chart: 'carpet', across: 'engine_station', lines: 'tail_stock', up: ['parts.x', 'lap.pull'] };
    expect(chart(two)).toEqual([]);
    expect(chart({ ...two, lines: 'engine_station' })).toEqual([
      'cg_chart: CG has the engine_station both across and as the second axis. Take two different ones. The axes of CG are Tail stock, the engine_station.',
    ]);
    expect(chart({ ...two, lines: '' })).toEqual([
      'cg_chart: CG lacks an axis of CG. The axes of CG are Tail stock, the engine_station.',
    ]);
    expect(chart({ ...two, chart: 'contour', up: ['parts.x'] })).toEqual([
      'cg_chart: CG draws lines between the values of Tail stock, which is a choice. Take an axis of numbers. The axes of CG are Tail stock, the engine_station.',
    ]);
    const sweep = cellsOf(smallDesign()).find((each) => each.name === 'cg_sweep') as SweepCell;
    const narrow = withCell(smallDesign(), { ...sweep, axes: sweep.axes.slice(1) });
    const cell = cellsOf(narrow).find((each) => each.name === 'cg_chart')!;
    expect(faultsAfter(withCell(narrow, { ...cell, ...two } as Cell))).toEqual([
      'cg_chart: CG needs two axes and CG has 1. Give it a second one.',
    ]);
  });
  test('of one result against another', () => {
    const scatter = { chart: 'scatter', across: 'parts.x', up: ['lap.pull'], lines: '' };
    expect(chart(scatter)).toEqual([]);
    expect(chart({ ...scatter, across: 'engine_station' })).toEqual([
      'cg_chart: CG shows the engine_station, which CG does not compute. It computes the CG station of parts, the pull of lap.',
    ]);
    expect(chart({ chart: 'histogram', across: '', lines: '' })).toEqual([]);
    expect(chart({ chart: 'contour', up: ['parts.x', 'lap.pull'], lines: 'tail_stock' })).toContain(
      'cg_chart: CG shows 2 results. One is allowed.',
    );
  });
  test('of a weight and balance table', () => {
    const parts = { chart: 'moments', series: '', of: 'parts', up: [] };
    expect(chart(parts)).toEqual([]);
    expect(chart({ ...parts, of: 'part' })).toEqual([
      'cg_chart: CG shows the table of weight and balance “part”: there is none of that name. The tables of weight and balance are parts. Did you mean parts?',
    ]);
    expect(chart({ ...parts, chart: 'bars', up: ['mass'] })).toEqual([]);
    expect(chart({ ...parts, chart: 'bars', up: ['weight'] })).toEqual([
      'cg_chart: CG shows “weight” of each part. A chart can show mass, estimate, difference, moment, moment share.',
    ]);
    expect(chart({ ...parts, chart: 'bars', up: [] })).toEqual([
      'cg_chart: CG shows nothing. Take at least one number of the parts, such as mass.',
    ]);
  });
  test('of what runs around the lap', () => {
    const ring = { chart: 'ring', series: '', of: '', up: ['pull'] };
    expect(chart(ring)).toEqual([
      'cg_chart: CG has nothing to show. No piece of this design has anything that runs around the lap.',
    ]);
    expect(chart({ ...ring, of: 'lap.ring' })).toEqual([
      'cg_chart: CG shows “lap.ring”, which is nothing that runs around the lap. No piece of this design has anything that runs around the lap.',
    ]);
  });
  test('with limits of a check that is not there', () => {
    expect(chart({ checks: ['cg_band'] })).toEqual([]);
    expect(chart({ checks: ['cg_bnd'] })).toEqual([
      'cg_chart: CG shows the limits of “cg_bnd”: there is no check of that name. The checks are CG. Did you mean CG?',
    ]);
  });
});

test('a limit of a check has to have the dimension of what is watched', () => {
  expect(wrongWith({ 'cg_band.low': '3 g' })).toEqual([
    'cg_band.low: 3\u00a0g is a mass; here a length is wanted. Write a length, such as 10\u00a0mm.',
  ]);
});

describe('what waits', () => {
  test('says for what, in the order of the page', () => {
    const { compiled, state } = setLive(openLive(smallDesign(), library), [['cord.length', '3 kg']], library).live;
    const waits = faultsOf(compiled, state).filter((fault) => fault.state === 'waits');
    expect(waits.map(({ cell, path, waitsFor, message }) => [cell, path, waitsFor, message])).toEqual([
      ['id_cord', 'cord', 'cord.length', 'cord waits for the length of cord.'],
      ['id_lap', 'lap', 'cord.length', 'lap waits for the length of cord.'],
      ['id_sums', 'reserve', 'cord.length', 'reserve waits for the length of cord.'],
      ['id_sums', 'tight', 'cord.length', 'tight waits for the length of cord.'],
    ]);
  });
  test('includes a line whose dimension is not known yet', () => {
    const { compiled, state } = openLive(documentOf([formula('lines', { a: 'gone', b: 'a + 1 mm' })]), library);
    expect(faultsOf(compiled, state).map((fault) => fault.message)).toEqual([
      'Nothing is called gone. Write the name of a variable, a formula line or a result.',
      'b waits for a.',
    ]);
  });
  test('leaves out an option that is not picked', () => {
    const { compiled, state } = setLive(
      openLive(smallDesign(), library),
      [['tail_stock.faced.upper.material', 'no_wood']],
      library,
    ).live;
    expect(faultsOf(compiled, state).map((fault) => fault.path)).toEqual([
      'tail_stock.faced.upper.material',
      'tail_stock.faced',
    ]);
    expect(state.m[compiled.program.slotOf.get('parts.x')!]).not.toBeNaN();
  });
  test('has no value', () => {
    const { compiled, state } = setLive(openLive(smallDesign(), library), [['lap.height', '12 m']], library).live;
    const at = (path: string) => state.m[compiled.program.slotOf.get(path)!];
    expect([at('lap.speed'), at('lap.pull'), at('reserve'), at('tight')]).toEqual([
      Number.NaN,
      Number.NaN,
      Number.NaN,
      Number.NaN,
    ]);
    expect(at('tail_share')).not.toBeNaN();
  });
});
