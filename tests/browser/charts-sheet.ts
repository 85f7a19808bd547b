import { readFileSync } from 'node:fs';
import type { ChartCell } from '../../engine/index';
import { QUERN } from './designs';
import { piecesOf, withPieces } from './with-pieces';

const axis = (of: string, count: number, low = '', high = '') => ({ of, low, high, count });
const chart = (name: string, title: string, more: Partial<ChartCell>): ChartCell => ({
  ...{ kind: 'chart', id: `planted-${name}`, name, title, chart: 'line' },
  ...{ series: 'tip_sweep', across: 'engine_station', up: ['flight.pull'], lines: 'tip_weight', ...more },
});

/** One chart of every kind over the demo's design, in wind. */
export const everyKind: readonly ChartCell[] = [
  chart('lines_kind', 'Pull along the bearers', {}),
  chart('bars_kind', 'CG by stabiliser', {
    ...{ chart: 'bars', series: 'balance_sweep', across: 'stabiliser_stock', up: ['balance.cg_x'], lines: '' },
  }),
  chart('parts_kind', 'What every part weighs', { chart: 'bars', series: '', of: 'parts', up: ['mass'], lines: '' }),
  chart('moments_kind', 'Nose against tail', { chart: 'moments', series: '', of: 'parts', up: [], lines: '' }),
  chart('contour_kind', 'Pull over engine and tip weight', { chart: 'contour', checks: ['check_cg', 'check_pull'] }),
  chart('carpet_kind', 'Pull and CG as carpets', { chart: 'carpet', up: ['flight.pull', 'balance.cg_x'] }),
  chart('scatter_kind', 'Pull against CG', { chart: 'scatter', across: 'balance.cg_x', lines: 'tip_weight' }),
  chart('histogram_kind', 'How the CG spreads', { chart: 'histogram', up: ['balance.cg_x'], lines: '' }),
  chart('run_kind', 'Along the run', {
    ...{ chart: 'along', series: '', of: 'launch.run', across: 'distance', up: ['pull', 'speed'], lines: '' },
  }),
  chart('leg_kind', 'Along the gear leg', {
    ...{
      chart: 'along',
      series: '',
      of: 'gear.leg',
      across: 'distance',
      up: ['bending', 'torsion', 'stress'],
      lines: '',
    },
  }),
  chart('ring_kind', 'Pull around the lap', { chart: 'ring', series: '', of: 'lap.ring', up: ['pull'], lines: '' }),
];

/** The demo with charts of every kind at its top, as a file. */
export function fileOfEveryKind() {
  const demo = JSON.parse(readFileSync(QUERN, 'utf8'));
  const sweep = {
    ...{ kind: 'trial_series', id: 'planted-sweep', name: 'tip_sweep', title: 'Engine station by tip weight' },
    axes: [axis('engine_station', 13), axis('tip_weight', 5)],
    wanted: ['flight.pull', 'balance.cg_x', 'flight.pull_per_weight'],
  };
  const there = new Set<string>(piecesOf(demo).map((piece) => piece.of ?? ''));
  const blocks = ['lap', 'launch', 'gear']
    .filter((block) => !there.has(block))
    .map((block) => ({ kind: 'model', id: `planted-${block}`, name: block, title: block, of: block, fields: {} }));
  const air = piecesOf(demo).find((piece) => piece.name === 'air');
  air.fields = { ...air.fields, wind: '5 m/s' };
  const text = JSON.stringify(withPieces(demo, [sweep, ...everyKind, ...blocks]));
  return { name: 'kinds.tetherwright.json', mimeType: 'application/json', buffer: Buffer.from(text) };
}
