import { type NameInfo, unitNamed } from '../../../engine/index';
import type { Vocabulary } from '../../../workbook/editor/vocabulary';

const name = (path: string, title: string, unit: string, rest: Partial<NameInfo> = {}): NameInfo => ({
  path,
  title,
  unit,
  slot: 0,
  kind: 'result',
  cell: 'c1',
  symbol: '',
  dimension: unitNamed(unit)!.dimension,
  suffix: '',
  doc: '',
  settable: false,
  ...rest,
});

const names: readonly NameInfo[] = [
  name('tip_weight', 'tip weight', 'g', { kind: 'variable', settable: true }),
  name('line_length', 'line length', 'm', { kind: 'variable', settable: true }),
  name('pull_sweep.axis.low', 'line length, from', 'm', { kind: 'limit' }),
  name('flight.pull', 'Line pull', 'N', { doc: 'Tension of all lines together at the model.' }),
  name('flight.pull_at_handle', 'Pull at the handle', 'N'),
  name('flight.lap', 'Lap time', 's'),
  name('engine.thrust', 'Thrust against airspeed', 'N', { kind: 'curve' }),
  name('lines.breaking_load', 'Breaking load of one line', 'N'),
  name('tail_stock', 'tail stock', '', { kind: 'choice', options: ['balsa', 'light_ply'] }),
];
const shown: Readonly<Record<string, string>> = { 'flight.pull': '25.7 N', tip_weight: '21 g' };

/** What an editor of one text knows, without a sheet. */
export const vocabularyFor = (path: string): Vocabulary => ({
  path,
  names: () => names,
  name: (each) => names.find((info) => info.path === each),
  shown: (each) => shown[each] ?? '–',
});
