import { readFileSync } from 'node:fs';
import type { Document } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import { faultsOfLive, type Live, openLive } from '../../../engine/sheet/live';
import { cellsOf } from '../../../engine/sheet/sheets';
import { library } from '../../../engine/study/index';
import { onOneSheet } from '../sheet/one-sheet';

/*
 * The invented Quern 25 with each kind of engine in place of its own: a settled document a kind. Numbers are invented but of the size
 * that models have.
 */
const text = readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8');
const opened = openText(text);
if (!opened.ok) throw new Error(opened.message);
const demo = opened.document;

export type Fields = Readonly<Record<string, string>>;
const STAND: Fields = { station: 'engine_station', height: '5 mm', bearer_rear: '10 mm' };
export const block = (name: string, kind: string, fields: Fields) =>
  ({ kind: 'model', id: `b_${name}`, name, title: name, of: kind, fields }) as const;
const PROPELLER = block('propeller', 'propeller', { diameter: '9 in', pitch: '6 in' });
/** A table of the size that tunnels give for a 9×6. */
export const MEASURED = block('propeller', 'measured_propeller', {
  diameter: '9 in',
  pitch: '6 in',
  ...Object.fromEntries(
    [
      [0, 0.11, 0.05],
      [0.2, 0.1, 0.051],
      [0.4, 0.078, 0.049],
      [0.6, 0.045, 0.037],
      [0.8, 0, 0.012],
    ].flatMap((row, k) =>
      ['advance', 'thrust', 'power'].map((name, column) => [`${name}_${k + 1}`, String(row[column])]),
    ),
  ),
});

export const KINDS: Readonly<Record<string, Fields>> = {
  thrust_law: { static_thrust: '8 N', shaft_speed: '11400 rpm', zero_thrust_speed: '47 m/s' },
  measured_lap: { lap_time: '5.2 s', known_mass: '850 g', known_radius: '18.9 m' },
  tachometer: { reading_1: '11000 rpm' },
  two_stroke: {},
  electric: { governed_speed: '11500 rpm' },
};
const ALONE = new Set(['thrust_law', 'measured_lap']);

export function withEngine(kind: string, fields: Fields = {}, propeller = PROPELLER): Document {
  const engine = cellsOf(demo).find((cell) => cell.kind === 'model' && cell.name === 'engine')!;
  const put = { ...engine, of: kind, fields: { ...STAND, ...KINDS[kind], ...fields } } as typeof engine;
  const cells = cellsOf(demo).map((cell) => (cell === engine ? put : cell));
  const baseline = {};
  return { ...demo, sheets: onOneSheet(ALONE.has(kind) ? cells : [...cells, propeller]), baseline };
}
export const openWith = (...rest: Parameters<typeof withEngine>): Live => openLive(withEngine(...rest), library);
export const read = (live: Live, path: string): number => live.state.m[live.compiled.program.slotOf.get(path)!]!;
export const curve = (live: Live, path: string): number[] => {
  const at = live.compiled.program.slotOf.get(path)!;
  return Array.from(live.state.m.subarray(at, at + 21));
};
export const faults = (live: Live): string[] => faultsOfLive(live).map((fault) => fault.message);
export const rpm = (rate: number): number => (rate * 60) / (2 * Math.PI);
