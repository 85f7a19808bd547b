import { block } from '../../../engine/blocks/block';
import { type Cell, type Document, VERSION } from '../../../engine/sheet/document';
import type { Library } from '../../../engine/sheet/specs';
import { LENGTH, ONE } from '../../../engine/units/index';
import { onOneSheet } from '../sheet/one-sheet';
import { smallTables } from '../sheet/small-library';

const length = { dimension: LENGTH, unit: 'mm', symbol: '', doc: '' } as const;
const any = { ...length, default: 0, range: [-10, 10] } as const;

/** How often each block ran, in samples. */
export const runs = { root: 0, sum: 0, aside: 0 };

const root = block({
  kind: 'root',
  title: 'Root',
  doc: 'Square root of the side times the height.',
  fields: { side: { ...any, title: 'Side' }, height: { ...any, title: 'Height' } },
  results: { mean: { ...length, title: 'Geometric mean' } },
  reasons: { opposite: 'Side {side} and height {height} point opposite ways.' },
  run(m, f, r, i) {
    runs.root++;
    const product = m[f.side + i]! * m[f.height + i]!;
    if (product < 0) return 'opposite';
    m[r.mean + i] = Math.sqrt(product);
    return undefined;
  },
  draw: (m, f, r) => [
    { view: 'plan', part: 'edge', points: [0, 0, m[f.side]!, m[f.height]!] },
    { view: 'plan', part: 'mean', points: [m[r.mean]!, 0], label: 'root.mean' },
  ],
  traces: {
    steps: {
      title: 'Steps to the mean',
      doc: 'From nothing to the mean.',
      columns: {
        share: { dimension: ONE, unit: '%', symbol: 's', title: 'Share', doc: 'Of the way.' },
        reached: { ...length, tradeUnit: 'in', title: 'Reached' },
      },
      run: (m, f, r) =>
        m[f.side] === 0 ? undefined : { share: [0, 0.5, 1], reached: [0, m[r.mean]! / 2, m[r.mean]!] },
    },
  },
});

const sum = block({
  kind: 'sum',
  title: 'Sum',
  doc: 'Adds to the root.',
  fields: {
    root: { link: 'root', results: root.results, doc: '' },
    more: { ...any, title: 'More' },
    times: { option: ['once', 'twice'], default: 'once', symbol: '', title: 'Times', doc: '' },
  },
  results: { total: { ...length, title: 'Total' } },
  reasons: {},
  run(m, f, r, i) {
    runs.sum++;
    m[r.total + i] = (m[f.root.mean + i]! + m[f.more + i]!) * (m[f.times + i] === 1 ? 2 : 1);
    return undefined;
  },
});

const aside = block({
  kind: 'aside',
  title: 'Aside',
  doc: 'Nobody reads it.',
  fields: { by: { dimension: ONE, unit: '', symbol: '', title: 'By', doc: '', default: 1, range: [0, 9] } },
  results: { size: { dimension: ONE, unit: '', symbol: '', title: 'Size', doc: '' } },
  reasons: {},
  run(m, f, r, i) {
    runs.aside++;
    m[r.size + i] = m[f.by + i]! ** 2;
    return undefined;
  },
});

export const library: Library = { blocks: [root, sum, aside], tables: smallTables };

const variable = (name: string, text: string, low = '', high = '') => ({
  name,
  title: name,
  symbol: '',
  unit: 'mm',
  text,
  low,
  high,
  step: '',
});

/**
 *   a ──> root ──> sum ──> double (formula)
 *   b ──┘       more ┘
 *   b = 2 a as typed; bolt (choice) gives bolt.length = more; aside hangs on nothing
 */
export const slideRule = (
  change: { sweep?: Partial<Extract<Cell, { kind: 'trial_series' }>>; a?: string } = {},
): Document => ({
  format: 'tetherwright',
  version: VERSION,
  title: 'Slide rule',
  drawn: '',
  date: '',
  units: 'metric',
  sheets: onOneSheet([
    {
      kind: 'variables',
      id: '1',
      name: 'set_these',
      title: '',
      rows: [variable('a', change.a ?? '20 mm', '10 mm', '50 mm'), variable('b', '2 × a', '-10 mm', '40 mm')],
    },
    {
      kind: 'choice',
      id: '2',
      name: 'bolt',
      title: 'Bolt',
      of: 'numbers',
      columns: [{ name: 'length', unit: 'mm', title: 'Length' }],
      options: [
        { name: 'short', title: 'short', pattern: 'plain', values: { length: '5 mm' } },
        { name: 'middle', title: 'middle', pattern: 'plain', values: { length: '7 mm' } },
        { name: 'long', title: 'long', pattern: 'plain', values: { length: 'a / 2' } },
      ],
      text: 'middle',
    },
    { kind: 'model', id: '3', name: 'root', title: 'Root', of: 'root', fields: { side: 'a', height: 'b' } },
    { kind: 'model', id: '4', name: 'sum', title: 'Sum', of: 'sum', fields: { more: 'bolt.length' } },
    { kind: 'model', id: '5', name: 'aside', title: 'Aside', of: 'aside', fields: {} },
    {
      kind: 'formula',
      id: '6',
      name: 'lines',
      title: '',
      lines: [{ name: 'double', text: '2 × sum.total', unit: 'mm' }],
    },
    {
      kind: 'trial_series',
      id: '7',
      name: 'grid',
      title: 'Grid',
      axes: [
        { of: 'a', low: '', high: '', count: 21 },
        { of: 'b', low: '', high: '35 mm', count: 10 },
        { of: 'bolt', low: '', high: '', count: 0 },
        { of: 'sum.times', low: '', high: '', count: 0, options: ['twice'] },
      ],
      wanted: ['double', 'root.mean'],
      ...change.sweep,
    },
  ]),
  rows: [],
  figures: ['double'],
});
