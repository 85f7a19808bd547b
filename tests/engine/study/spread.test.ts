import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { EngineService } from '../../../engine/protocol';
import type { Cell, Document, SpreadCell, SpreadRow } from '../../../engine/sheet/document';
import { serialise } from '../../../engine/sheet/file';
import { openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { gatheringOf, planFor, runnerOf } from '../../../engine/study/kinds/index';
import { startEngine } from '../../../engine/study/session';
import type { SpreadPlan } from '../../../engine/study/spread/plan';
import type { SweepProgress } from '../../../engine/terms/index';
import { onOneSheet } from '../sheet/one-sheet';
import { documentOf, formula, library, part, parts, smallDesign, variable, variables } from '../sheet/small';
import { crew } from './pool/crew';
import { library as ruleLibrary, slideRule } from './slide-rule';
import { runPlan } from './whole';

const row = (of: string, size: string, change: Partial<SpreadRow> = {}): SpreadRow => ({
  ...{ of, distribution: 'normal', size, above: '' },
  ...change,
});
const spread = (change: Partial<SpreadCell>): SpreadCell => ({
  ...{ kind: 'tolerances', id: 'id_shop', name: 'shop', title: 'Shop', rows: [], parts: false, wanted: [] },
  ...{ samples: 2000, seed: 7 },
  ...change,
});
const withCell = (document: Document, cell: Cell): Document => ({
  ...document,
  sheets: onOneSheet([...cellsOf(document), cell]),
});

function told(document: Document, cell: SpreadCell) {
  const live = openLive(withCell(document, cell), library);
  const plan = planFor(live, 0, cell.name);
  if (typeof plan === 'string') throw new Error(plan);
  return runPlan(live, plan).spread!;
}
const refusal = (document: Document, cell: SpreadCell): unknown =>
  planFor(openLive(withCell(document, cell), library), 0, cell.name);

/** y = 3 a + 2 b + c with standard deviations 1, 2 and 0.5: 3, 4 and 0.5 of their own. */
const linear = documentOf([
  variables('set', variable('a', '', '10'), variable('b', '', '20'), variable('c', '', '30')),
  formula('sum', { y: '3 a + 2 b + c'.replaceAll(' a', ' × a').replaceAll(' b', ' × b') }),
]);
const VARIANCE = 9 + 16 + 0.25;
const SD = Math.sqrt(VARIANCE);
/** Four standard errors: one run in 16 000 lies beyond by chance. */
const ERRORS = 4;

describe('a sum of normals', () => {
  const N = 2000;
  const cell = spread({ rows: [row('a', '1'), row('b', '2'), row('c', '0.5')], wanted: ['y'], samples: N });
  const { results, factors, designs, compared, samples } = told(linear, cell);
  const y = results[0]!;
  it('keeps its closed form within the error of as many designs at random', () => {
    expect([designs, compared, samples]).toEqual([N, N, N]);
    expect(Math.abs(y.mean - 100)).toBeLessThan((ERRORS * SD) / Math.sqrt(N));
    expect(Math.abs(y.deviation - SD)).toBeLessThan((ERRORS * SD) / Math.sqrt(2 * (N - 1)));
    // A percentile of n designs is off by √(p (1 − p)/n)/f, f the density there.
    for (const [found, p, z, density] of [
      [y.low, 0.05, -1.6448536, 0.1031356],
      [y.middle, 0.5, 0, 0.3989423],
      [y.high, 0.95, 1.6448536, 0.1031356],
    ] as const) {
      expect(Math.abs(found - (100 + z * SD))).toBeLessThan((ERRORS * SD * Math.sqrt((p * (1 - p)) / N)) / density);
    }
  });
  it('is shared out by the squares of their own deviations, alone as with the others', () => {
    expect(factors).toEqual(['a', 'b', 'c'].map((path) => ({ path, what: 'value' })));
    for (const [k, own] of [9, 16, 0.25].entries()) {
      expect(y.firstError[k]).toBeLessThan(0.1);
      expect(Math.abs(y.first[k]! - own / VARIANCE)).toBeLessThan(ERRORS * y.firstError[k]!);
      expect(Math.abs(y.total[k]! - own / VARIANCE)).toBeLessThan(ERRORS * y.totalError[k]!);
    }
  });
});

describe('what is typed of a row', () => {
  const one = (change: Partial<SpreadRow>) =>
    told(linear, spread({ rows: [row('a', '2', change)], wanted: ['a'], samples: 20_000 })).results[0]!;
  it('is the half-width of a uniform and of a triangular spread', () => {
    expect(one({ distribution: 'uniform' }).deviation).toBeCloseTo(2 / Math.sqrt(3), 3);
    expect(one({ distribution: 'triangular' }).deviation).toBeCloseTo(2 / Math.sqrt(6), 3);
  });
  it('may be another amount above than below', () => {
    expect(one({ distribution: 'uniform', size: '0', above: '4' }).mean).toBeCloseTo(12, 3);
    // Mean of a triangle: a third of its three corners, 8, 10 and 16.
    expect(one({ distribution: 'triangular', above: '6' }).mean).toBeCloseTo(34 / 3, 3);
  });
  it('is told of where it can be no amount', () => {
    const refused = (change: Partial<SpreadRow>) =>
      refusal(linear, spread({ rows: [row('a', '2', change)], wanted: ['y'] }));
    expect(refused({ size: '-2' })).toBe('Shop lets the a be off by “-2”, which is less than nothing. Type 0 or more.');
    expect(refused({ size: '0' })).toBe('Shop lets the a be off by nothing. Type an amount, or remove it.');
    expect(refused({ size: '2 g' })).toBe('Shop does not know how far the a may be off: look at “2 g” there.');
  });
  it('may not hide what else differs', () => {
    const follows = documentOf([
      variables('set', variable('a', '', '10'), variable('b', '', '2 × a')),
      formula('sum', { y: 'a + b' }),
    ]);
    expect(refusal(follows, spread({ rows: [row('a', '1'), row('b', '1')], wanted: ['y'] }))).toBe(
      'The b is computed from the a, and both are to differ: what it gets of its own would hide the other. Remove one of them.',
    );
    expect(told(follows, spread({ rows: [row('a', '1')], wanted: ['y'] })).results[0]?.deviation).toBeCloseTo(3, 1);
  });
  it('may ask for no more than fits', () => {
    expect(refusal(linear, spread({ rows: [row('a', '1')], wanted: Array(8).fill('y'), samples: 1_000_000 }))).toBe(
      'Shop asks for 3000000 designs with 8 results each: 1000000, and as many again for each thing that differs. Take 833333 or fewer, or fewer things.',
    );
  });
  it('has to be of a number that is there', () => {
    expect(refusal(smallDesign(), spread({ rows: [row('motor.lost', '1 N')], wanted: ['lap.pull'] }))).toBe(
      'The pull lost of motor has no value to differ from. Type one.',
    );
  });
});

describe('correlations', () => {
  const two = documentOf([
    variables('set', variable('a', '', '10'), variable('b', '', '20')),
    formula('sum', { y: 'a + b', z: 'a - b' }),
  ]);
  const rows = [row('a', '1'), row('b', '1')];
  const pair = (text: string, of = 'a', and = 'b') => [{ of, and, text }];
  const run = (text: string) => told(two, spread({ rows, pairs: pair(text), wanted: ['y', 'z'], samples: 8000 }));
  it('make a sum spread more and a difference less, as the closed form says', () => {
    for (const r of [-0.8, 0, 0.5, 0.9]) {
      const { results } = run(`${r}`);
      const error = ERRORS / Math.sqrt(2 * 8000);
      expect(Math.abs(results[0]!.deviation / Math.sqrt(2 + 2 * r) - 1)).toBeLessThan(error);
      expect(Math.abs(results[1]!.deviation / Math.sqrt(2 - 2 * r) - 1)).toBeLessThan(error);
    }
  });
  it('have one share of the variance together, beside what is off by itself', () => {
    const three = spread({ rows: [...rows, row('c', '2')], pairs: pair('0.5'), wanted: ['y'] });
    const { factors, results } = told(linear, three);
    expect(factors).toEqual([
      { path: 'a', what: 'together', paths: ['a', 'b'] },
      { path: 'c', what: 'value' },
    ]);
    // 3 a + 2 b + c: 9 + 4 + 6 of the two, 4 of c.
    const [both, alone] = results[0]!.first;
    expect(Math.abs(both! - 19 / 23)).toBeLessThan(ERRORS * results[0]!.firstError[0]!);
    expect(Math.abs(alone! - 4 / 23)).toBeLessThan(ERRORS * results[0]!.firstError[1]!);
  });
  /*
   * JCGM 101:2008, 9.4: power lost in comparing microwave power meters, y = x1² + x2², both with u = 0.005; x2 = 0 (from memory; with the closed form
   * of the variance, 4 u² (x1² + x2²) + 4 u⁴ (1 + r²) + 8 r u² x1 x2): y = 150 and 2551 × 10⁻⁶ with u(y) = 112 and 502 uncorrelated, 121
   * and 505 where r = 0.9.
   */
  it.each([
    [0.01, 0, 150e-6, 112e-6],
    [0.01, 0.9, 150e-6, 121e-6],
    [0.05, 0, 2550e-6, 502e-6],
    [0.05, 0.9, 2550e-6, 505e-6],
  ])('JCGM 101, 9.4: x1 = %f, r = %f', (x1, r, y, u) => {
    const N = 40_000;
    const design = documentOf([
      variables('set', variable('x1', '', `${x1}`), variable('x2', '', '0')),
      formula('loss', { y: 'x1^2 + x2^2' }),
    ]);
    const cell = spread({
      rows: [row('x1', '0.005'), row('x2', '0.005')],
      pairs: pair(`${r}`, 'x1', 'x2'),
      wanted: ['y'],
      samples: N,
    });
    const [found] = told(design, cell).results;
    expect(Math.abs(found!.mean - y)).toBeLessThan((ERRORS * u) / Math.sqrt(N) + 0.5e-6);
    const closed = Math.sqrt(4 * 25e-6 * x1 * x1 + 4 * 625e-12 * (1 + r * r));
    expect(Math.abs(closed - u)).toBeLessThan(0.6e-6);
    // y is skew near 0: its own kurtosis widens the scatter of the deviation by less than twice.
    expect(Math.abs(found!.deviation / closed - 1)).toBeLessThan((2 * ERRORS) / Math.sqrt(2 * N));
  });
  it('are refused where they cannot be', () => {
    const why = (pairs: SpreadCell['pairs'], more: readonly SpreadRow[] = []) =>
      refusal(linear, spread({ rows: [...rows, ...more], pairs: pairs!, wanted: ['y'] }));
    expect(why(pair('high'))).toBe('Shop does not know the correlation of the a and the b: look at “high” there.');
    const impossible = [...pair('0.9'), ...pair('0.9', 'b', 'c'), ...pair('-0.9', 'a', 'c')];
    expect(why(impossible, [row('c', '1')])).toBe(
      'Shop has correlations that cannot all hold at once. Look at those of things that are correlated with each other: if two go with a third, they go with each other too.',
    );
  });
});

describe('what is cut from one material', () => {
  const cut = (volume: string, x: string, more = {}) => ({ volume, material: 'soft_wood', x, ...more });
  const design = (tolerance = {}) =>
    documentOf([
      parts([
        part('engine', 'point', { mass: '200 g', x: '-150', mass_tolerance: '0.1 mg', station_tolerance: '0.1 µm' }),
        part('wing', 'solid', cut('1000 cm³', '95', { station_tolerance: '0.1 µm', ...tolerance })),
        part('body', 'solid', cut('500 cm³', '200', { station_tolerance: '0.1 µm' })),
        part('hole', 'solid', cut('-100 cm³', '200', { station_tolerance: '0.1 µm' })),
      ]),
    ]);
  const run = (document: Document) =>
    told(document, spread({ parts: true, wanted: ['parts.mass', 'parts.x'], samples: 4000 }));
  const reads = (document: Document) => {
    const live = openLive(document, library);
    return (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
  };
  const error = ERRORS / Math.sqrt(2 * 4000) + 0.01;
  it('is off in weight together: the density differs once, a cut-out the other way', () => {
    const read = reads(design());
    const wood = read('parts.wing.mass') + read('parts.body.mass') + read('parts.hole.mass');
    expect(read('parts.mass_sd') / (0.1 * wood)).toBeCloseTo(1, 4);
    const { results, factors } = run(design());
    expect(Math.abs(results[0]!.deviation / (0.1 * wood) - 1)).toBeLessThan(error);
    expect(Math.abs(results[1]!.deviation / read('parts.x_sd') - 1)).toBeLessThan(error + 0.02);
    expect(factors.filter(({ what }) => what !== 'place')).toEqual([
      { path: 'parts.engine.mass', what: 'mass' },
      { path: 'soft_wood', what: 'stuff' },
    ]);
  });
  it('is off by itself where the part says how far, or was weighed', () => {
    const read = reads(design({ mass_tolerance: '10 g' }));
    const rest = 0.1 * (read('parts.body.mass') + read('parts.hole.mass'));
    expect(read('parts.mass_sd') / Math.hypot(0.01, rest)).toBeCloseTo(1, 4);
    const { results } = run(design({ mass_tolerance: '10 g' }));
    expect(Math.abs(results[0]!.deviation / read('parts.mass_sd') - 1)).toBeLessThan(error);
  });
  it('is not off twice where the density itself has a row', () => {
    const plank = { table: 'materials', name: 'plank', title: 'Plank', source: 'weighed' };
    const plain = design();
    const own: Document = {
      ...JSON.parse(JSON.stringify(plain).replaceAll('soft_wood', 'plank')),
      rows: [{ ...plank, values: { density: '400 kg/m³' } }],
    };
    const rows = [row('plank.density', '20 kg/m³')];
    const [mass] = told(own, spread({ parts: true, rows, wanted: ['parts.mass'], samples: 4000 })).results;
    expect(Math.abs(mass!.deviation / (20 * 1.4e-3) - 1)).toBeLessThan(error);
  });
});

describe('the uncertainty of the parts', () => {
  const design = documentOf([
    parts([
      part('nose', 'point', { mass: '200 g', x: '-150', mass_tolerance: '4 g', station_tolerance: '3 mm' }),
      part('wing', 'solid', { volume: '2400 cm³', material: 'soft_wood', x: '95' }),
      part('tail', 'point', { mass: '60 g', weighed: '55 g', x: '500' }),
    ]),
  ]);
  const live = openLive(design, library);
  const read = (path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;

  it('gives the weight and the CG the deviation that the table adds up', () => {
    const found = told(design, spread({ parts: true, wanted: ['parts.mass', 'parts.x', 'parts.y'], samples: 4000 }));
    const [mass, x, y] = found.results;
    const error = ERRORS / Math.sqrt(2 * 4000);
    expect(Math.abs(mass!.deviation / read('parts.mass_sd') - 1)).toBeLessThan(error);
    // The table's own is of first order; the second adds less than a hundredth here.
    expect(Math.abs(x!.deviation / read('parts.x_sd') - 1)).toBeLessThan(error + 0.01);
    expect(Math.abs(y!.deviation / read('parts.y_sd') - 1)).toBeLessThan(error + 0.01);
    expect(found.factors.map(({ path, what }) => `${what} ${path}`)).toEqual(
      ['nose', 'wing', 'tail'].flatMap((name) => [`mass parts.${name}.mass`, `place parts.${name}.x`]),
    );
  });
  it('is taken once where a row says it too', () => {
    const cell = spread({ rows: [row('parts.nose.mass', '1 g')], parts: true, wanted: ['parts.mass'] });
    const { factors, results } = told(design, cell);
    expect(factors.filter(({ path }) => path === 'parts.nose.mass')).toHaveLength(1);
    const others = read('parts.mass_sd') ** 2 - 0.004 ** 2;
    expect(results[0]!.deviation / Math.sqrt(others + 0.001 ** 2)).toBeCloseTo(1, 1);
  });
  it('is what a row without an amount takes, for any shape of part, weighed or not', () => {
    for (const [name, deviation] of [
      ['nose', 0.004],
      ['wing', 0.1 * read('parts.wing.mass')],
      ['tail', 0.0005],
    ] as const) {
      const of = `parts.${name}.mass`;
      const { results } = told(design, spread({ rows: [row(of, '')], wanted: [of, 'parts.mass'] }));
      expect(results[0]!.mean / read(of)).toBeCloseTo(1, 3);
      expect(results[0]!.deviation / deviation).toBeCloseTo(1, 2);
      expect(results[1]!.deviation / deviation).toBeCloseTo(1, 2);
    }
  });
});

const WINDY = spread({
  rows: [row('cord.length', '8 m', { distribution: 'uniform' }), row('tip_weight', '2 g')],
  wanted: ['lap.pull', 'parts.mass'],
  samples: 1500,
});

describe('designs that have no answer', () => {
  const document = smallDesign();
  const hard = {
    ...document,
    sheets: onOneSheet(
      cellsOf(document).map((each) =>
        each.kind === 'model' && each.of === 'motor' ? { ...each, fields: { ...each.fields, pull: '3.1 N' } } : each,
      ),
    ),
  };
  const found = told(hard, WINDY);
  it('are counted with their reason and leave the rest as it is', () => {
    const [pull, mass] = found.results;
    expect(pull!.missing).toBeGreaterThan(100);
    expect(pull!.missing).toBeLessThan(1400);
    expect(mass!.missing).toBe(0);
    expect(found.causes).toEqual([
      {
        reason: 'Too little thrust: …\u00a0N are missing on …\u00a0m of cord at …\u00a0m. Shorten the cord.',
        count: pull!.missing,
      },
    ]);
    expect(pull!.mean).toBeGreaterThan(0);
    expect(pull!.first.every(Number.isFinite)).toBe(true);
  });
});

describe('a spread in the engine', () => {
  const document = withCell(smallDesign(), WINDY);
  async function run(size: number, coarse = false, change: Partial<SpreadCell> = {}) {
    const engine: EngineService = start(size);
    await engine.open(withCell(smallDesign(), { ...WINDY, ...change }));
    const news: SweepProgress[] = [];
    await engine.sweep({ sweep: 'shop', coarse }, (p) => news.push(p));
    return { engine, news, last: news.at(-1)! };
  }
  const start = (size: number): EngineService => startEngine(library, crew(size, library).ports);

  const bytes = ({ columns, why, sentences, spread: made }: SweepProgress): string => {
    const hash = createHash('sha256');
    for (const column of [...columns, why]) hash.update(new Uint8Array(column.buffer));
    return hash.update(JSON.stringify([sentences, made])).digest('hex');
  };

  it('gives the same bytes whatever the number of workers, and others from another seed', async () => {
    const alone = (await run(0)).last;
    expect(alone).toMatchObject({ state: 'done', done: 1500 * 4, total: 1500 * 4 });
    for (const size of [1, 2, 4]) expect(bytes((await run(size)).last)).toBe(bytes(alone));
    expect(bytes((await run(0, false, { seed: 8 })).last)).not.toBe(bytes(alone));
  });

  it('says the same as the command line', async () => {
    const { last } = await run(0);
    const read = readArguments(['small.json', '--tolerances', 'shop', '--json']);
    if (read.ask !== 'run') throw new Error(read.ask);
    const { out, code } = answer(read.request, serialise(document), library);
    expect(code).toBe(0);
    expect(JSON.parse(out).spread).toEqual(JSON.parse(JSON.stringify(last.spread)));
  });

  it('tells a few designs first, and no shares of them, while a finger is down', async () => {
    const { last } = await run(0, true);
    expect(last).toMatchObject({ state: 'done', done: 200 });
    expect(last.spread).toMatchObject({ designs: 200, samples: 1500, compared: 0 });
    expect(last.spread!.results[0]).toMatchObject({ first: [], total: [] });
    expect(last.columns.map((column) => column.length)).toEqual([200, 200, 200, 200]);
    expect(last.wanted).toEqual(['lap.pull', 'parts.mass', 'cord.length', 'tip_weight']);
  });

  it('stops when it is told to, and keeps what there is', async () => {
    const engine = start(0);
    await engine.open(withCell(smallDesign(), { ...WINDY, samples: 20_000 }));
    const news: SweepProgress[] = [];
    const over = engine.sweep({ sweep: 'shop' }, (p) => {
      if (news.push(p) === 2) void engine.stop('shop');
    });
    await over;
    const last = news.at(-1)!;
    expect(last.state).toBe('stopped');
    expect(last.done).toBeLessThan(last.total);
    expect(last.spread!.designs).toBeGreaterThan(0);
  });

  it('tells of the first 20 000 on the way, and of all at the end', () => {
    const many = spread({ rows: [row('a', '1')], wanted: ['y'], samples: 30_000 });
    const live = openLive(withCell(linear, many), library);
    const plan = planFor(live, 0, 'shop') as SpreadPlan;
    const runner = runnerOf(live.compiled, plan);
    const gathering = gatheringOf(plan);
    gathering.take(0, runner.run(plan.order));
    expect(gathering.progress('running').spread).toMatchObject({ designs: 20_000, samples: 30_000, compared: 20_000 });
    const last = gathering.progress('done');
    expect(last.spread).toMatchObject({ designs: 30_000, compared: 30_000 });
    expect(last.columns[0]).toHaveLength(20_000);
  });

  it('is not computed anew for an edit that has nothing to do with it', async () => {
    const { engine, last } = await run(0);
    await engine.set([['tail_stock', 'soft']]);
    const news: SweepProgress[] = [];
    await engine.sweep({ sweep: 'shop' }, (p) => news.push(p));
    expect(news).toHaveLength(1);
    expect(bytes(news[0]!)).toBe(bytes(last));
    await engine.set([['shop.row2.size', '3 g']]);
    await engine.sweep({ sweep: 'shop' }, (p) => news.push(p));
    expect(bytes(news.at(-1)!)).not.toBe(bytes(last));
  });

  it('says why it cannot run', async () => {
    const engine = start(0);
    await engine.open(withCell(smallDesign(), { ...WINDY, wanted: [] }));
    const news: SweepProgress[] = [];
    await engine.sweep({ sweep: 'shop' }, (p) => news.push(p));
    expect(news[0]).toMatchObject({
      state: 'fault',
      message: 'Shop has no results to show. Add one under “Results asked for”.',
    });
  });
});

describe('a spread of the workbook on the command line', () => {
  const file = serialise(withCell(slideRule(), spread({ rows: [row('a', '1 mm')], wanted: ['double'], samples: 400 })));
  const ask = (...words: string[]) => {
    const read = readArguments(['rule.json', ...words]);
    if (read.ask !== 'run') throw new Error(read.ask === 'nothing' ? read.message : read.ask);
    return answer(read.request, file, ruleLibrary);
  };
  it('is the same as one that is spelled out', () => {
    const spelled = ask('--tolerances', 'a=normal 1 mm', '--get', 'double', '--samples', '400', '--seed', '7');
    expect(ask('--tolerances', 'shop')).toEqual(spelled);
    expect(ask('--tolerances', 'shop', '--seed', '8').out).not.toBe(spelled.out);
  });
  it('has to be there', () => {
    expect(ask('--tolerances', 'shopp')).toMatchObject({
      err: 'There are no tolerances called “shopp”. The tolerances are shop.\n',
      code: 1,
    });
  });
});
