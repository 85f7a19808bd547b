import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { EngineService } from '../../../../engine/protocol';
import type { Document } from '../../../../engine/sheet/document';
import { openLive } from '../../../../engine/sheet/live';
import { startEngine } from '../../../../engine/study/session';
import type { SweepProgress } from '../../../../engine/terms/index';
import { library, slideRule } from '../slide-rule';
import { wholeOf } from '../whole';
import { type Crew, crew, type Manner, sound } from './crew';

/** 30 000 designs, a fifth of which has no answer, each for a reason with numbers of its own. */
const large = (): Document =>
  slideRule({
    sweep: {
      axes: [
        { of: 'a', low: '', high: '', count: 100 },
        { of: 'b', low: '', high: '', count: 100 },
        { of: 'bolt', low: '', high: '', count: 0 },
      ],
    },
  });
const alone = wholeOf(openLive(large(), library), 'grid') as SweepProgress;

async function opened({ ports }: Crew): Promise<EngineService> {
  const engine = startEngine(library, ports);
  await engine.open(large());
  return engine;
}

async function sweep(engine: EngineService, coarse = false): Promise<SweepProgress[]> {
  const told: SweepProgress[] = [];
  await engine.sweep({ sweep: 'grid', coarse }, (p) => told.push(p));
  return told;
}

/** Every byte of what was computed, in little. */
function bytesOf({ columns, why, sentences }: SweepProgress): string {
  const hash = createHash('sha256');
  for (const column of [...columns, why]) hash.update(new Uint8Array(column.buffer));
  return hash.update(sentences.join('\n')).digest('hex');
}

describe('a pool', () => {
  it.each([1, 2, 4])('of %i gives the same bytes as one that computes alone', async (size) => {
    const others = crew(size, library);
    const last = (await sweep(await opened(others))).at(-1)!;
    expect(last.state).toBe('done');
    expect(bytesOf(last)).toBe(bytesOf(alone));
    expect(others.answered).toHaveLength(size);
    for (const count of others.answered) expect(count).toBeGreaterThan(0);
  });

  it('gives the same bytes in whatever order the chunks come back', async () => {
    let seed = 7;
    const dawdle: Manner = (_, work) => {
      seed = (seed * 16807) % 2147483647;
      setTimeout(work, seed % 12);
    };
    const last = (await sweep(await opened(crew(4, library, () => dawdle)))).at(-1)!;
    expect(bytesOf(last)).toBe(bytesOf(alone));
  });

  it('is not asked for what is computed sooner than sent', async () => {
    const others = crew(2, library);
    const { now: _, ...ports } = others.ports;
    const engine = startEngine(library, { ...ports, now: () => 0 });
    await engine.open(large());
    expect(bytesOf((await sweep(engine)).at(-1)!)).toBe(bytesOf(alone));
    expect(others.asked).toEqual([]);
  });

  it('tells how far it has come and about how long it still takes', async () => {
    const told = await sweep(await opened(crew(2, library)));
    const running = told.filter((p) => p.state === 'running');
    expect(running.length).toBeGreaterThan(1);
    for (const [k, p] of running.entries()) {
      expect(p.total).toBe(30_000);
      expect(p.done).toBeGreaterThanOrEqual(running[k - 1]?.done ?? 0);
    }
    const guessed = running.filter((p) => p.left !== undefined);
    expect(guessed.length).toBeGreaterThan(0);
    for (const { left } of guessed) expect(left).toBeGreaterThan(0);
    expect(told.at(-1)!.left).toBeUndefined();
  });

  it('computes the coarse lattice first, and nothing else while a finger is down', async () => {
    const others = crew(2, library);
    const last = (await sweep(await opened(others), true)).at(-1)!;
    expect(last).toMatchObject({ state: 'done', done: 9 * 9 * 3 });
    for (const [row, code] of last.why.entries()) {
      if (code !== 0xffff) expect(last.columns[0]![row]).toBe(alone.columns[0]![row]);
    }
  });

  it('is kept for the next sweep, of another design too', async () => {
    const others = crew(2, library);
    const engine = await opened(others);
    await sweep(engine);
    await engine.set([['a', '3 × 7 mm']]);
    expect((await sweep(engine)).at(-1)!.state).toBe('done');
    expect(others.answered).toHaveLength(2);
  });

  it.each([
    ['told to', (engine: EngineService) => engine.stop('grid')],
    ['a newer edit comes', (engine: EngineService) => engine.set([['bolt', 'short']])],
  ])('gets no more chunks when %s', async (_, act) => {
    const others = crew(2, library);
    const engine = await opened(others);
    let handed = 0;
    const told: SweepProgress[] = [];
    await engine.sweep({ sweep: 'grid' }, (p) => {
      told.push(p);
      if (handed > 0 || others.answered.every((count) => count === 0)) return;
      void act(engine);
      handed = others.asked.filter((message) => message.ask === 'rows').length;
    });
    await new Promise((resolve) => setTimeout(resolve, 30));
    expect(told.at(-1)).toMatchObject({ state: 'stopped' });
    expect(told.at(-1)!.done).toBeLessThan(30_000);
    expect(others.asked.filter((message) => message.ask === 'rows')).toHaveLength(handed);
    expect(others.asked.filter((message) => message.ask === 'end')).toHaveLength(2);
  });

  it('lets a newer edit win: what comes after it answers for the newer design', async () => {
    const engine = await opened(crew(2, library));
    const first = sweep(engine);
    await engine.set([['bolt', 'short']]);
    const second = await sweep(engine);
    expect((await first).at(-1)!.state).toBe('stopped');
    expect(second.at(-1)).toMatchObject({ state: 'done', revision: 2, done: 30_000 });
    expect(new Set(second.map((p) => p.revision))).toEqual(new Set([2]));
  });
});

describe('a worker that fails', () => {
  const ends = async (manners: (k: number) => Manner, size = 2, patience: Parameters<typeof crew>[3] = 'whole') => {
    const others = crew(size, library, manners, patience);
    const told = await sweep(await opened(others));
    return { others, last: told.at(-1)! };
  };
  /** Does so at its n-th chunk. */
  const atChunk = (n: number, act: (die: () => void) => void): Manner => {
    let count = 0;
    return (message, work, die) => {
      if (message.ask === 'rows' && ++count >= n) act(die);
      else work();
    };
  };

  it.each([
    ['dies', (die: () => void) => die(), 'whole'],
    ['falls silent', () => {}, 'while-busy'],
  ] as const)('because it %s is replaced, and the sweep ends right', async (_, act, patience) => {
    const { others, last } = await ends((k) => (k === 0 ? atChunk(2, act) : sound), 2, patience);
    expect(last.state).toBe('done');
    expect(bytesOf(last)).toBe(bytesOf(alone));
    expect(others.answered.length).toBeGreaterThan(2);
    expect(others.answered[0]).toBeLessThan(2);
  });

  it('before it has begun is replaced a few times, then the engine computes alone', async () => {
    const { others, last } = await ends(() => (_, __, die) => die(), 1);
    expect(last.state).toBe('done');
    expect(bytesOf(last)).toBe(bytesOf(alone));
    expect(others.answered).toEqual([0, 0, 0]);
  });

  it('to start at all leaves the engine to compute alone', async () => {
    const { ports } = crew(2, library);
    const spawn = (): never => {
      throw new Error('no workers here');
    };
    const engine = startEngine(library, { ...ports, pool: { ...ports.pool!, spawn } });
    await engine.open(large());
    expect(bytesOf((await sweep(engine)).at(-1)!)).toBe(bytesOf(alone));
  });

  it('to do what it is asked leaves that to the engine', async () => {
    const { ports } = crew(2, { ...library, blocks: [] });
    const engine = startEngine(library, ports);
    await engine.open(large());
    expect(bytesOf((await sweep(engine)).at(-1)!)).toBe(bytesOf(alone));
  });

  it('twice over the same designs ends the sweep, and says so', async () => {
    const { last } = await ends(() => (message, work, die) => {
      if (message.ask === 'rows') die();
      else work();
    });
    expect(last.state).toBe('fault');
    expect(last.message).toMatch(
      /^grid stopped: 2 workers ended or fell silent over the same \d+ designs\. Narrow its limits to find which they are\.$/,
    );
    expect(last.done).toBeGreaterThan(0);
    expect(last.done).toBeLessThan(last.total);
  });
});
