import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { noteFormulas, saidPath } from '../../../engine/sheet/cells/index';
import { openText, serialise } from '../../../engine/sheet/file';
import { faultsOfLive, openLive, setLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import { clubDesigns } from '../../../engine/study/place/club-designs';
import { wholeOf } from './whole';

const folder = new URL('../../../data/designs/', import.meta.url);
const made = clubDesigns();

test('beside the demo there are the trainer and the stunt model of the same invented club', () => {
  expect(readdirSync(folder).toSorted()).toEqual(
    ['quern-25.tetherwright.json', ...made.map(({ file }) => file)].toSorted(),
  );
});

describe.each(made)('$file', ({ file, text }) => {
  const stored = readFileSync(new URL(file, folder), 'utf8');
  const opened = openText(stored);
  if (!opened.ok) throw new Error(opened.message);
  const { document } = opened;
  const live = openLive(document, library);
  const at = (path: string, from = live): number => from.state.m[from.compiled.program.slotOf.get(path)!]!;

  test('is what is begun and placed; if not, run npm run demo', () => {
    expect(stored).toBe(text);
    expect(serialise(document)).toBe(stored);
  });
  test('says that it is invented', () => {
    expect(document.invented).toBe(true);
    expect(document.drawn).toMatch(/invented/);
    const [first] = document.sheets[0]!.pieces;
    expect(first?.kind === 'note' && first.text).toMatch(/invented .* of the invented Saltmarsh Lane club/);
  });
  test('opens without a fault, with no stop broken, and every number that its notes say', () => {
    expect(faultsOfLive(live).map(({ path, message }) => `${path}: ${message}`)).toEqual([]);
    const broken = cellsOf(document).flatMap((cell) => {
      if (cell.kind !== 'check') return [];
      const value = at(cell.name);
      return value < at(`${cell.name}.low`) || value > at(`${cell.name}.high`) ? [`${cell.title}: ${value}`] : [];
    });
    expect(broken).toEqual([]);
    for (const cell of cellsOf(document)) {
      if (cell.kind !== 'note') continue;
      for (const [k] of noteFormulas(cell.text).entries()) expect(at(saidPath(cell.name, k))).not.toBeNaN();
    }
  });
  test('what its ballast advises, done as told, balances it', () => {
    const tip = at('ballast.tip_weight') + at('tip_weight');
    const nose = at('ballast.nose_weight') + at('nose_weight');
    const texts = [
      ['tip_weight', `${Math.max(0, tip) * 1000} g`],
      ['nose_weight', `${Math.max(0, nose) * 1000} g`],
    ] as const;
    const done = setLive(live, texts, library).live;
    expect(Math.abs(at('balance.cg_x', done) - at('ballast.wanted_x', done))).toBeLessThan(2e-4);
    expect(Math.abs(at('flight.outboard_low', done))).toBeLessThan((0.5 * Math.PI) / 180);
  });
});

test('the trainer has the span and lines that its name stands for, and laps that a beginner can follow', () => {
  const hob = openLive(openOf('hob.tetherwright.json'), library);
  const at = (path: string): number => hob.state.m[hob.compiled.program.slotOf.get(path)!]!;
  expect([at('wing.span'), at('lines.length')]).toEqual([0.6, 12]);
  expect(at('flight.lap_time')).toBeGreaterThan(4.5);
});

test('the stunt model flies to 60° up: the lines pull less and less, as m v²/r less its weight along them', () => {
  const trivet = openLive(openOf('trivet-46.tetherwright.json'), library);
  const at = (path: string, from = trivet): number => from.state.m[from.compiled.program.slotOf.get(path)!]!;
  expect(at('wing.span')).toBeCloseTo(1.4, 9);
  const run = wholeOf(trivet, 'overhead_series');
  if (typeof run === 'string') throw new Error(run);
  expect([...run.why].every((code) => code === 0)).toBe(true);
  const pulls = [...run.columns[0]!];
  for (const [k, pull] of pulls.slice(1).entries()) expect(pull).toBeLessThan(pulls[k]!);
  // Along the line of a lap at elevation ε: T = m v²/R − m g sin ε + L sin φ, with the outboard wing φ under the line; nose and rudder left out.
  for (const degrees of [0, 30, 60]) {
    const up = setLive(trivet, [['elevation', `${degrees}°`]], library).live;
    const e = at('flight.elevation', up);
    expect((e * 180) / Math.PI).toBeCloseTo(degrees, 0);
    const [m, v, r] = [at('parts.mass', up), at('flight.speed', up), at('flight.radius', up)];
    const hung = at('flight.lift', up) * Math.sin(at('flight.outboard_low', up));
    const byHand = (m * v * v) / r - m * 9.80665 * Math.sin(e) + hung;
    expect(at('flight.pull', up) / byHand, `${degrees}°`).toBeGreaterThan(0.85);
    expect(at('flight.pull', up) / byHand, `${degrees}°`).toBeLessThan(1.12);
  }
  expect(at('least_overhead')).toBeCloseTo(Math.sqrt(9.80665 * at('flight.radius')), 9);
});

function openOf(file: string) {
  const opened = openText(readFileSync(new URL(file, folder), 'utf8'));
  if (!opened.ok) throw new Error(opened.message);
  return opened.document;
}
