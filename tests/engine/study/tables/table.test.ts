import { setImmediate as nextTurn } from 'node:timers/promises';
import { fromArrow } from 'arquero';
import { beforeEach, describe, expect, it } from 'vitest';
import type { EngineService } from '../../../../engine/protocol';
import type { Document } from '../../../../engine/sheet/document';
import { startEngine } from '../../../../engine/study/session';
import { withoutNumbers } from '../../../../engine/study/tables/reasons';
import type { TableAnswer, TableView } from '../../../../engine/study/tables/told';
import type { SweepProgress } from '../../../../engine/terms/index';
import { library, runs, slideRule } from '../slide-rule';

const whole: TableView = {
  series: 'grid',
  columns: [],
  keep: [],
  rows: 'all',
  reason: '',
  groups: [],
  measures: ['least', 'greatest', 'mean', 'median'],
  sort: '',
  descending: false,
};
const NONE = Number.NaN;

/** 21 sides a, 10 heights b (two of them below nothing: no answer), 3 bolts. */
async function swept(document: Document = slideRule()): Promise<{ engine: EngineService; p: SweepProgress }> {
  const pause = async (): Promise<void> => {
    await nextTurn();
  };
  const engine = startEngine(library, { pause, now: () => 0 });
  await engine.open(document);
  return { engine, p: await run(engine) };
}
async function run(engine: EngineService): Promise<SweepProgress> {
  let last: SweepProgress | undefined;
  await engine.sweep({ sweep: 'grid' }, (p) => {
    last = p;
  });
  return last!;
}

let engine: EngineService;
let p: SweepProgress;
beforeEach(async () => {
  ({ engine, p } = await swept());
});

const ask = (view: Partial<TableView>, from = 0, to = 1000): Promise<TableAnswer> =>
  engine.table({ ...whole, ...view }, from, to);
const column = (answer: TableAnswer, key: string): number[] => [
  ...answer.values[answer.columns.findIndex((each) => each.key === key)]!,
];
/** Rows of the sweep as objects, straight from what the sweep told. */
const rows = () =>
  Array.from({ length: p.total }, (_, sample) => ({
    sample,
    a: p.axes[0]!.values[Math.floor(sample / 30)]!,
    b: p.axes[1]!.values[Math.floor(sample / 3) % 10]!,
    bolt: sample % 3,
    double: p.columns[0]![sample]!,
    mean: p.columns[1]![sample]!,
    reason: p.why[sample] === 0 ? '' : p.sentences[p.why[sample]! - 1]!,
  }));

describe('rows of a sweep', () => {
  it('come in its order, axes first, with the reason of each that has no answer', async () => {
    const answer = await ask({});
    expect(answer).toMatchObject({ state: 'ready', total: 630, rows: 630, from: 0 });
    expect(answer.columns.map((each) => each.key)).toEqual(['a', 'b', 'bolt', 'sum.times', 'double', 'root.mean']);
    for (const key of ['a', 'b', 'bolt', 'double'] as const) {
      expect(column(answer, key)).toEqual(rows().map((row) => row[key]));
    }
    expect(answer.reasons).toEqual(rows().map((row) => row.reason));
    expect([...answer.samples]).toEqual(rows().map((_, sample) => sample));
    expect(answer.reasons.filter((reason) => reason !== '')).toHaveLength(21 * 2 * 3);
  });

  it('come by range, no more than are there', async () => {
    const some = await ask({}, 600, 660);
    expect(some.from).toBe(600);
    expect(column(some, 'double')).toEqual(
      rows()
        .slice(600)
        .map((row) => row.double),
    );
  });

  it('show the columns that are named, in that order', async () => {
    const answer = await ask({ columns: ['double', 'a'] }, 0, 2);
    expect(answer.columns.map((each) => each.key)).toEqual(['double', 'a']);
  });

  it.each([false, true])(
    'are sorted by a result, equal ones as they were, those without one last (descending: %s)',
    async (descending) => {
      const answer = await ask({ sort: 'double', descending });
      const sign = descending ? -1 : 1;
      const sorted = rows().sort((x, y) => {
        if (Number.isNaN(x.double) !== Number.isNaN(y.double)) return Number.isNaN(x.double) ? 1 : -1;
        return sign * (x.double - y.double) || x.sample - y.sample;
      });
      expect(column(answer, 'double')).toEqual(sorted.map((row) => row.double));
      expect(column(answer, 'a')).toEqual(sorted.map((row) => row.a));
      expect(answer.reasons.slice(-126).every((reason) => reason !== '')).toBe(true);
    },
  );

  it('are kept by limits on either side, ends included', async () => {
    const limit = rows()[200]!.double;
    const most = await ask({ keep: [{ of: 'double', low: NONE, high: limit }] });
    expect(column(most, 'double')).toEqual(
      rows()
        .map((row) => row.double)
        .filter((x) => x <= limit),
    );
    const both = await ask({
      keep: [
        { of: 'double', low: limit, high: NONE },
        { of: 'a', low: 0.02, high: 0.03 },
      ],
    });
    expect(both.rows).toBe(rows().filter((row) => row.double >= limit && row.a >= 0.02 && row.a <= 0.03).length);
    expect(both.rows).toBeGreaterThan(0);
    expect(await ask({ keep: [{ of: 'double', low: NONE, high: NONE }] })).toMatchObject({ rows: 630 });
  });

  it('are kept by option of a choice', async () => {
    const answer = await ask({ keep: [{ of: 'bolt', low: NONE, high: NONE, options: ['short', 'long'] }] });
    expect(new Set(column(answer, 'bolt'))).toEqual(new Set([0, 2]));
    expect(answer.rows).toBe(420);
  });

  it('are kept by having an answer, or none, or none for one reason', async () => {
    expect(await ask({ rows: 'answered' })).toMatchObject({ rows: 504 });
    expect(await ask({ rows: 'unanswered' })).toMatchObject({ rows: 126 });
    const reason = 'Side …\u00a0mm and height …\u00a0mm point opposite ways.';
    const { causes } = await ask({});
    expect(causes).toEqual([{ reason, count: 126 }]);
    expect(await ask({ reason })).toMatchObject({ rows: 126 });
    expect(await ask({ reason: 'The lines are slack.' })).toMatchObject({ rows: 0, values: expect.any(Array) });
  });

  it('say which is the present design, wherever it is sorted to', async () => {
    // a = 20 mm is on the axis; b = 2 a = 40 mm lies outside of it.
    expect(await ask({})).toMatchObject({ present: -1 });
    await engine.set([
      ['b', '15 mm'],
      ['sum.times', 'twice'],
    ]);
    await run(engine);
    const at = rows().findIndex(
      (row) => Math.abs(row.a - 0.02) < 1e-9 && Math.abs(row.b - 0.015) < 1e-9 && row.bolt === 1,
    );
    expect(await ask({})).toMatchObject({ present: at });
    const sorted = await ask({ sort: 'double', descending: true });
    expect(column(sorted, 'double')[sorted.present]).toBe(rows()[at]!.double);
    expect(await ask({ keep: [{ of: 'bolt', low: NONE, high: NONE, options: ['short'] }] })).toMatchObject({
      present: -1,
    });
    await engine.set([['a', '20.4 mm']]);
    await run(engine);
    expect(await ask({})).toMatchObject({ present: at, exact: false });
  });
});

describe('groups', () => {
  it('say how many designs they have, and the least, greatest, mean and median of every result', async () => {
    const answer = await ask({ groups: ['bolt', 'b'], columns: ['double'] });
    expect(answer.columns.map((each) => each.key)).toEqual([
      'b',
      'bolt',
      'count',
      'unanswered',
      'double least',
      'double greatest',
      'double mean',
      'double median',
    ]);
    expect(answer.rows).toBe(30);
    for (let g = 0; g < 30; g++) {
      const [b, bolt] = [column(answer, 'b')[g], column(answer, 'bolt')[g]];
      const members = rows().filter((row) => row.b === b && row.bolt === bolt);
      const found = members.map((row) => row.double).filter((x) => !Number.isNaN(x));
      const sorted = found.toSorted((x, y) => x - y);
      const expected = {
        count: members.length,
        unanswered: members.length - found.length,
        'double least': found.length ? Math.min(...found) : NONE,
        'double greatest': found.length ? Math.max(...found) : NONE,
        // 21 sides: the eleventh is the middle one.
        'double median': found.length ? sorted[10]! : NONE,
      };
      for (const [key, value] of Object.entries(expected)) expect(column(answer, key)[g], key).toBe(value);
      const mean = column(answer, 'double mean')[g]!;
      if (found.length === 0) expect(mean).toBeNaN();
      else expect(mean).toBeCloseTo(found.reduce((sum, x) => sum + x, 0) / found.length, 12);
    }
  });

  it('hold only what is kept, and are sorted by what is said of them', async () => {
    const answer = await ask({
      groups: ['bolt'],
      measures: ['mean'],
      keep: [{ of: 'a', low: 0.03, high: NONE }],
      sort: 'root.mean mean',
      descending: true,
      rows: 'answered',
    });
    expect(column(answer, 'count')).toEqual([88, 88, 88]);
    expect(column(await ask({ groups: ['bolt'], sort: 'bolt', descending: true }), 'bolt')).toEqual([2, 1, 0]);
    expect(await ask({ groups: ['bolt'], keep: [{ of: 'a', low: 9, high: NONE }] })).toMatchObject({ rows: 0 });
  });

  it('take the middle of the two middle ones where there is an even number', async () => {
    const answer = await ask({
      groups: ['a'],
      measures: ['median'],
      keep: [{ of: 'b', low: -0.001, high: 0.006 }],
      columns: ['double'],
    });
    const six = rows()
      .filter(
        (row) => row.a === p.axes[0]!.values[4] && (row.b === p.axes[1]!.values[2] || row.b === p.axes[1]!.values[3]),
      )
      .map((row) => row.double)
      .sort((x, y) => x - y);
    expect(six).toHaveLength(6);
    expect(column(answer, 'double median')[4]).toBe((six[2]! + six[3]!) / 2);
  });
});

describe('a table', () => {
  it('waits until its sweep has been computed for the present design', async () => {
    await engine.set([['bolt', 'short']]);
    expect(await ask({})).toMatchObject({ state: 'waits', rows: 0 });
    expect(await engine.tableFile(whole, 'csv')).toEqual([]);
    await run(engine);
    expect(await ask({})).toMatchObject({ state: 'ready', rows: 630 });
    expect(await engine.table({ ...whole, series: 'gird' }, 0, 9)).toMatchObject({ state: 'waits' });
  });

  it('is there again without computing after an edit that its sweep has nothing to do with', async () => {
    runs.root = 0;
    await engine.set([['aside.by', '3']]);
    expect(runs.root).toBe(0);
    expect((await run(engine)).columns).toEqual(p.columns);
    expect(runs.root).toBe(0);
    expect(await ask({})).toMatchObject({ state: 'ready', rows: 630 });
    await engine.set([['b.high', '39 mm']]);
    await run(engine);
    expect(runs.root).toBe(0);
    await engine.set([['a.high', '51 mm']]);
    await run(engine);
    expect(runs.root).toBeGreaterThan(600);
  });
});

describe('a file of a table', () => {
  const small = () =>
    swept(
      slideRule({
        sweep: {
          axes: [
            { of: 'bolt', low: '', high: '', count: 0 },
            { of: 'b', low: '-4 mm', high: '9 mm', count: 2 },
          ],
          wanted: ['root.mean'],
        },
        a: '4 mm',
      }),
    );
  const view: TableView = { ...whole, sort: 'bolt', descending: true };

  it('is RFC 4180 text with the units in its head, in the order of the view', async () => {
    ({ engine } = await small());
    expect((await engine.tableFile(view, 'csv')).join('')).toBe(
      [
        'bolt,b (mm),root.mean (mm),no answer because',
        'long,-4,,Side 4\u00a0mm and height −4\u00a0mm point opposite ways.',
        'long,9,6,',
        'middle,-4,,Side 4\u00a0mm and height −4\u00a0mm point opposite ways.',
        'middle,9,6,',
        'short,-4,,Side 4\u00a0mm and height −4\u00a0mm point opposite ways.',
        'short,9,6,',
        '',
      ].join('\r\n'),
    );
    const groups: TableView = { ...view, groups: ['bolt'], measures: ['mean'] };
    expect((await engine.tableFile(groups, 'csv')).join('')).toBe(
      [
        'bolt,designs,designs without an answer,"root.mean (mm), mean",no answer because',
        'long,2,1,6,',
        'middle,2,1,6,',
        'short,2,1,6,',
        '',
      ].join('\r\n'),
    );
  });

  it('is Apache Arrow that reads back as the same', async () => {
    ({ engine } = await small());
    const [bytes] = await engine.tableFile(view, 'arrow');
    const read = fromArrow(bytes as Uint8Array);
    expect(read.columnNames()).toEqual(['bolt', 'b (mm)', 'root.mean (mm)', 'no answer because']);
    expect(read.array('bolt')).toEqual(['long', 'long', 'middle', 'middle', 'short', 'short']);
    expect([...read.array('b (mm)')]).toEqual([-4, 9, -4, 9, -4, 9]);
    expect([...read.array('root.mean (mm)')]).toEqual([null, 6, null, 6, null, 6]);
    expect(read.get('no answer because', 0)).toBe('Side 4\u00a0mm and height −4\u00a0mm point opposite ways.');
    // The marks at both ends of an Arrow file.
    expect(Buffer.from((bytes as Uint8Array).slice(0, 6)).toString()).toBe('ARROW1');
    expect(Buffer.from((bytes as Uint8Array).slice(-6)).toString()).toBe('ARROW1');
  });
});

describe('a reason without its numbers', () => {
  it.each([
    ['Side 10 mm and height −10.5 mm point opposite ways.', 'Side … mm and height … mm point opposite ways.'],
    ['Thrust is short by 1.2×10⁻⁶ N at 24.3 m/s.', 'Thrust is short by … N at … m/s.'],
    ['wing_2 asks for cl 1.31; 1.2 is the most.', 'wing_2 asks for cl …; … is the most.'],
    ['The lines are slack.', 'The lines are slack.'],
    ['nose_out is −3°: more than 5.', 'nose_out is …°: more than ….'],
  ])('%s', (sentence, general) => expect(withoutNumbers(sentence)).toBe(general));
});
