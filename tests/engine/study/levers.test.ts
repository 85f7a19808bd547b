import { describe, expect, it } from 'vitest';
import type { Document, LeverRow, LeversCell } from '../../../engine/sheet/document';
import { serialise } from '../../../engine/sheet/file';
import { openLive, setLive } from '../../../engine/sheet/live';
import { leverEffect, leverRatio, rankLevers } from '../../../engine/sheet/rank-levers';
import { cellsOf } from '../../../engine/sheet/sheets';
import { answer } from '../../../engine/study/command/answer';
import { readArguments } from '../../../engine/study/command/arguments';
import { planFor } from '../../../engine/study/kinds/index';
import { startEngine } from '../../../engine/study/session';
import type { SweepProgress } from '../../../engine/terms/index';
import { onOneSheet } from '../sheet/one-sheet';
import { smallDesign, library as smallLibrary, variable, variables } from '../sheet/small';
import { crew } from './pool/crew';
import { library, slideRule } from './slide-rule';
import { wholeOf } from './whole';

const row = (of: string, text: string, change: Partial<LeverRow> = {}): LeverRow => ({
  ...{ of, way: 'both', text },
  ...change,
});
const levers = (change: Partial<LeversCell>): LeversCell => ({
  ...{ kind: 'what_helps', id: '9', name: 'tried', title: 'Tried', rows: [], wanted: ['root.mean', 'double'] },
  ...{ rank: '', per: '' },
  ...change,
});
const withLevers = (change: Partial<LeversCell>): Document => {
  const document = slideRule();
  return { ...document, sheets: onOneSheet([...cellsOf(document), levers(change)]) };
};

function run(change: Partial<LeversCell>): SweepProgress | string {
  const live = openLive(withLevers(change), library);
  return wholeOf(live, 'tried');
}
function ran(change: Partial<LeversCell>): SweepProgress {
  const progress = run(change);
  if (typeof progress === 'string') throw new Error(progress);
  return progress;
}

/** What the sheet itself says when the text is typed into it. */
function typed(path: string, text: string, result: string): number {
  const { live } = setLive(openLive(slideRule(), library), [[path, text]], library);
  return live.state.m[live.compiled.program.slotOf.get(result)!]!;
}

describe('levers', () => {
  it('change one thing at a time, and give what the sheet gives with it typed', () => {
    const {
      levers: told,
      columns,
      state,
      axes,
    } = ran({
      rows: [row('a', '5 mm'), row('bolt', ''), row('sum.times', '')],
    });
    expect([state, axes]).toEqual(['done', []]);
    expect(told!.changes.map(({ path, way, to }) => [path, way, Number(to.toPrecision(6))])).toEqual([
      ['a', 'up', 0.025],
      ['a', 'down', 0.015],
      ['bolt', 'to', 0],
      ['bolt', 'to', 2],
      ['sum.times', 'to', 1],
    ]);
    for (const [w, path] of ['root.mean', 'double'].entries()) {
      expect(told!.present[w]).toBe(typed('a', '20 mm', path));
      expect([...columns[w]!]).toEqual([
        typed('a', '25 mm', path),
        typed('a', '15 mm', path),
        typed('bolt', 'short', path),
        typed('bolt', 'long', path),
        typed('sum.times', 'twice', path),
      ]);
    }
  });

  it('take one thing twice in different ways, and only the options that are named', () => {
    const { levers: told } = ran({
      rows: [row('a', '5 mm', { way: 'up' }), row('a', '44 mm', { way: 'to' }), row('bolt', '', { options: ['long'] })],
    });
    expect(told!.changes.map(({ row, path, to }) => [row, path, to])).toEqual([
      [0, 'a', 0.025],
      [1, 'a', 0.044],
      [2, 'bolt', 2],
    ]);
  });

  it('say why a change has no answer', () => {
    const { columns, why, sentences } = ran({ rows: [row('b', '-1 mm', { way: 'to' }), row('sum.times', '')] });
    expect(columns[0]![0]).toBeNaN();
    expect([...why]).toEqual([1, 0]);
    expect(sentences).toEqual(['Side 20\u00a0mm and height −1\u00a0mm point opposite ways.']);
  });

  it.each([
    [
      { rows: [row('a', '1 mm'), row('b', '1 mm')] },
      'The b is computed from the a, and both are to be changed: one would hide the other. Remove one of them.',
    ],
    [
      { rows: [row('a', '0 mm')] },
      'Tried changes the a by “0 mm”. Type an amount greater than 0; whether it goes up or down is said beside it.',
    ],
    [
      { rows: [row('bolt', '', { options: ['middle'] })] },
      'Tried has nothing to change: what it may be changed to is what it is already.',
    ],
    [{ rows: [] }, 'Tried has nothing to change. Add something to it.'],
  ] as [Partial<LeversCell>, string][])('%j cannot be tried', (change, message) => {
    expect(run(change)).toBe(message);
  });

  it('take no point on a scale for a step', () => {
    const warm = variables('weather', variable('heat', '°C', '20 °C'));
    const cell = levers({ rows: [row('heat', '2 °C')], wanted: ['tip_weight'] });
    const document = { ...smallDesign(), sheets: onOneSheet([...cellsOf(smallDesign()), warm, cell]) };
    expect(planFor(openLive(document, smallLibrary), 1, 'tried')).toBe(
      '2 °C is a point on a scale. By how much the heat is changed is written in K: “2 K”.',
    );
  });

  it('are ranked by how far they move a result, either way, and by that for each unit of another', () => {
    const progress: SweepProgress = {
      ...ran({ rows: [row('a', '5 mm'), row('bolt', '')] }),
      columns: [Float64Array.of(12, 7, 10, Number.NaN), Float64Array.of(1.5, 1.1, 1.2, 1)],
      levers: { changes: ran({ rows: [row('a', '5 mm'), row('bolt', '')] }).levers!.changes, present: [10, 1] },
    };
    expect([0, 1, 2, 3].map((k) => leverEffect(progress, 0, k))).toEqual([2, -3, 0, Number.NaN]);
    expect(rankLevers(progress, 0)).toEqual([1, 0, 2, 3]);
    expect(rankLevers(progress, 1)).toEqual([0, 2, 1, 3]);
    expect(leverRatio(progress, 0, 1, 0)).toBe(4);
    expect(leverRatio(progress, 1, 0, 2)).toBeNaN();
    expect(rankLevers(progress, 0, 1)).toEqual([1, 0, 2, 3]);
    expect(rankLevers(progress, 1, 0)).toEqual([0, 1, 2, 3]);
  });

  it('that are left over of solving count as no change', () => {
    const progress = ran({ rows: [row('a', '5 mm', { way: 'up' })], wanted: ['root.mean'] });
    const present = progress.levers!.present[0]!;
    const nearly = { ...progress, columns: [Float64Array.of(present * (1 + 1e-9))] };
    expect(leverEffect(nearly, 0, 0)).toBe(0);
    expect(leverEffect({ ...progress, columns: [Float64Array.of(present * (1 + 1e-6))] }, 0, 0)).not.toBe(0);
  });

  const change = { rows: [row('a', '5 mm'), row('bolt', '')] };
  it('are the same from the worker with others to help, and come again after an edit', async () => {
    const { ports } = crew(2, library);
    const engine = startEngine(library, ports);
    await engine.open(withLevers(change));
    const news: SweepProgress[] = [];
    await engine.sweep({ sweep: 'tried' }, (progress) => news.push(progress));
    const { revision: _, ...last } = news.at(-1)!;
    const { revision: __, ...direct } = ran(change);
    expect(last).toEqual(direct);
    await engine.set([['a', '30 mm']]);
    await engine.sweep({ sweep: 'tried' }, (progress) => news.push(progress));
    expect(news.at(-1)).toMatchObject({ state: 'done', revision: 2 });
    expect(news.at(-1)!.levers!.present[0]).toBe(typed('a', '30 mm', 'root.mean'));
    expect(news.at(-1)!.levers!.changes[0]).toMatchObject({ from: 0.03, to: expect.closeTo(0.035, 12) });
  });
});

describe('levers on the command line', () => {
  function ask(change: Partial<LeversCell>, ...words: string[]) {
    const read = readArguments(['slide.json', '--helps', 'tried', ...words]);
    if (read.ask !== 'run') throw new Error(`asked for ${read.ask}`);
    return answer(read.request, serialise(withLevers(change)), library);
  }
  const rows = [row('a', '5 mm', { way: 'up' }), row('bolt', '', { options: ['long'] })];

  it('are printed ranked, each with what it does', () => {
    expect(ask({ rows })).toEqual({
      out: 'Ranked by root.mean\na from 20\u00a0mm to 25\u00a0mm: root.mean +7.1\u00a0mm, double +14.1\u00a0mm\nbolt from middle to long: root.mean 0\u00a0mm, double +6\u00a0mm\n',
      err: '',
      code: 0,
    });
    expect(ask({ rows, rank: 'double', per: 'root.mean' }).out).toBe(
      'Ranked by double for each mm of root.mean\na from 20\u00a0mm to 25\u00a0mm: root.mean +7.1\u00a0mm, double +14.1\u00a0mm; 2 mm/mm\nbolt from middle to long: root.mean 0\u00a0mm, double +6\u00a0mm; no change of root.mean\n',
    );
  });

  it('say why a change has no answer, and come as data', () => {
    const away = [row('b', '-1 mm', { way: 'to' })];
    expect(ask({ rows: away }).out).toBe(
      'Ranked by root.mean\nb from 40\u00a0mm to −1\u00a0mm: no answer. Side 20\u00a0mm and height −1\u00a0mm point opposite ways.\n',
    );
    expect(JSON.parse(ask({ rows: away }, '--json').out).levers).toEqual({
      wanted: ['root.mean', 'double'],
      present: [Math.sqrt(0.0008), expect.closeTo(0.0705685, 6)],
      changes: [
        {
          ...{ path: 'b', from: 0.04, to: -0.001, values: [null, null] },
          reason: 'Side 20\u00a0mm and height −1\u00a0mm point opposite ways.',
        },
      ],
    });
  });

  it('are asked for by a name that is there', () => {
    const read = readArguments(['slide.json', '--helps', 'tryed']);
    if (read.ask !== 'run') throw new Error();
    expect(answer(read.request, serialise(withLevers({ rows })), library).err).toBe(
      'There is no list of what helps most called “tryed”. The lists of what helps most are tried.\n',
    );
    expect(readArguments(['slide.json', '--helps'])).toEqual({
      ask: 'nothing',
      message: '--helps needs the name of a list of what helps most and found none. Write it like --helps pull_helps.',
    });
  });
});
