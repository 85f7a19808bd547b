import { beforeEach, describe, expect, it } from 'vitest';
import { type Live, openLive, setLive } from '../../../engine/sheet/live';
import { faultOf } from '../../../engine/sheet/sentences';
import { planFor, runnerOf } from '../../../engine/study/kinds/index';
import { CHUNK } from '../../../engine/study/run/runner';
import type { SweepPlan } from '../../../engine/study/sweep/plan';
import type { SweepProgress } from '../../../engine/terms/index';
import { library, runs, slideRule } from './slide-rule';
import { wholeOf } from './whole';

const open = (change?: Parameters<typeof slideRule>[0]): Live => openLive(slideRule(change), library);
const stepOf = (live: Live, path: string): number =>
  live.compiled.program.steps.findIndex((step) => step.path === path);
const plan = (live: Live): SweepPlan => planFor(live, 1, 'grid') as SweepPlan;
const whole = (live: Live): SweepProgress => wholeOf(live, 'grid') as SweepProgress;

beforeEach(() => {
  runs.root = runs.sum = runs.aside = 0;
});

describe('a sweep', () => {
  it('lays its axes from limits, typed ends and options', () => {
    const { axes, wanted, total } = whole(open());
    expect(axes.map(({ path, values }) => [path, values.length, values[0], values.at(-1)])).toEqual([
      ['a', 21, 0.01, 0.05],
      ['b', 10, -0.01, 0.035],
      ['bolt', 3, 0, 2],
      ['sum.times', 1, 1, 1],
    ]);
    expect(wanted).toEqual(['double', 'root.mean']);
    expect(total).toBe(21 * 10 * 3);
  });

  it('gives in every row, bit for bit, what setting it by hand gives', () => {
    const live = open();
    const { axes, columns, why, sentences, total } = whole(live);
    let byHand = open();
    for (let row = 0; row < total; row++) {
      const [a, b, bolt] = [Math.floor(row / 30), Math.floor(row / 3) % 10, row % 3];
      byHand = setLive(
        byHand,
        [
          ['a', `${axes[0]!.values[a]!} m`],
          ['b', `${axes[1]!.values[b]!} m`],
          ['bolt', ['short', 'middle', 'long'][bolt]!],
          ['sum.times', 'twice'],
        ],
        library,
      ).live;
      const [double, mean] = ['double', 'root.mean'].map(
        (path) => byHand.state.m[byHand.compiled.program.slotOf.get(path)!]!,
      );
      if (!Object.is(columns[0]![row], double) || !Object.is(columns[1]![row], mean)) {
        expect([row, columns[0]![row], columns[1]![row]]).toEqual([row, double, mean]);
      }
      if (why[row] !== 0) {
        const fault = faultOf(byHand.compiled, byHand.state, stepOf(byHand, 'root'));
        expect(sentences[why[row]! - 1]).toBe(fault?.message);
      }
    }
  });

  it('says of each sample without an answer why it has none, by the sentence of the step where the trouble began', () => {
    const { why, sentences, columns } = whole(open());
    for (const [row, code] of why.entries()) {
      expect(code === 0).toBe(!Number.isNaN(columns[0]![row]!));
      // b runs from −10 mm in ten steps of 5 mm: the first two rows of ten are opposite to a.
      expect(code !== 0).toBe(Math.floor(row / 3) % 10 < 2);
    }
    expect(sentences[0]).toBe('Side 10\u00a0mm and height −10\u00a0mm point opposite ways.');
  });

  it('runs only the steps between its axes and what it wants, once a sample', () => {
    const live = open();
    runs.root = runs.sum = runs.aside = 0;
    const { order, each } = plan(live);
    const kinds = [...each].map((k) => live.compiled.program.steps[k]!.path);
    // The formula of b is left out, since an axis stands in its place; aside is not wanted.
    expect(kinds.sort()).toEqual([
      'bolt',
      'bolt.long.length',
      'double',
      'root',
      'root.height',
      'root.side',
      'sum',
      'sum.more',
    ]);
    whole(live);
    const opposite = 21 * 2 * 3;
    // Once more for each sample that has no answer, to fill its sentence.
    expect(runs.root).toBe(order.length + opposite);
    expect(runs.sum).toBe(order.length - opposite);
    expect(runs.aside).toBe(0);
  });

  it('computes nothing but the wanted part', () => {
    const live = open({
      sweep: { axes: [{ of: 'bolt', low: '', high: '', count: 0 }], wanted: ['root.mean', 'double'] },
    });
    runs.root = runs.sum = 0;
    const { columns } = whole(live);
    expect([runs.root, runs.sum]).toEqual([0, 3]);
    expect(new Set(columns[0]).size).toBe(1);
  });

  it('has the same numbers whatever the chunks and their order', () => {
    const live = open();
    const { columns } = whole(live);
    const shuffled = { ...plan(live), order: plan(live).order.slice().reverse() };
    const runner = runnerOf(live.compiled, shuffled);
    for (let from = 0; from < shuffled.order.length; from += 7) {
      const rows = runner.run(shuffled.order.subarray(from, from + 7));
      for (const [k, sample] of rows.samples.entries()) {
        expect(rows.columns[0]![k]).toBe(columns[0]![sample]);
      }
    }
  });

  it('frees what waited for a formula whose place an axis takes', () => {
    const live = open({ sweep: { axes: [{ of: 'b', low: '1 mm', high: '2 mm', count: 2 }], wanted: ['root.mean'] } });
    const broken = setLive(live, [['b', '2 × nothing_here']], library).live;
    expect(broken.state.m[broken.compiled.program.slotOf.get('root.mean')!]).toBeNaN();
    const { columns, why } = whole(broken);
    expect([...why]).toEqual([0, 0]);
    expect(columns[0]![0]).toBe(Math.sqrt(0.02 * 0.001));
  });

  it('passes on a reason that lies outside of what is swept', () => {
    const live = open({ sweep: { axes: [{ of: 'bolt', low: '', high: '', count: 0 }], wanted: ['double'] } });
    const { sentences, why } = whole(
      setLive(
        live,
        [
          ['a', '-3 mm'],
          ['b', '1 mm'],
        ],
        library,
      ).live,
    );
    expect([...why]).toEqual([1, 1, 1]);
    expect(sentences).toEqual(['Side −3\u00a0mm and height 1\u00a0mm point opposite ways.']);
  });

  it('is plain data that can be sent and run elsewhere', () => {
    const live = open();
    const sent = structuredClone(plan(live));
    const elsewhere = open();
    const some = sent.order.subarray(0, 3 * CHUNK + 5);
    const rows = runnerOf(elsewhere.compiled, sent).run(some);
    expect(rows).toEqual(runnerOf(live.compiled, plan(live)).run(some));
    expect(structuredClone(rows)).toEqual(rows);
  });

  it('does not run on another program', () => {
    const other = setLive(open(), [['a', '3 × 7 mm']], library).live;
    expect(() => runnerOf(other.compiled, plan(open()))).toThrow(/^A plan for program \w+ cannot run on program \w+$/);
  });
});

describe('a sweep that cannot run', () => {
  const refusal = (change?: Parameters<typeof slideRule>[0], name = 'grid') => planFor(open(change), 1, name);

  it('says what there is instead', () => {
    expect(refusal({}, 'gird')).toBe('There is no trial series called “gird”. The trial series are grid.');
    expect(refusal({ sweep: { name: 'other' } }, 'grid')).toBe(
      'There is no trial series called “grid”. The trial series are other.',
    );
  });

  it('says which end is missing', () => {
    expect(refusal({ sweep: { axes: [{ of: 'root.side', low: '1 mm', high: 'a / (a - a)', count: 2 }] } })).toBe(
      'Grid does not know the greatest value of the side of Root. Type it there, or give the variable limits.',
    );
  });

  it('says how many designs are too many', () => {
    const axis = (of: string) => ({ of, low: '1 mm', high: '2 mm', count: 1001 });
    expect(refusal({ sweep: { axes: [axis('a'), axis('b')] } })).toBe(
      'Grid asks for 1002001 designs. 1000000 are allowed: take fewer values.',
    );
  });

  it('repeats what the sheet has found wrong with it', () => {
    expect(refusal({ sweep: { wanted: ['duoble'] } })).toBe(
      'Grid asks for “duoble”: nothing has that name. Did you mean double?',
    );
  });
});
