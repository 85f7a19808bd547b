import { type AnyBlock, block } from '../../../engine/blocks/block';
import { AIRSPEED_KNOTS } from '../../../engine/blocks/curve';
import { partsResults } from '../../../engine/blocks/parts/results';
import { type Cell, type Document, type Part, type Variable, VERSION } from '../../../engine/sheet/document';
import { cellsOf } from '../../../engine/sheet/sheets';
import type { Library } from '../../../engine/sheet/specs';
import { FORCE, LENGTH, ONE, SPEED } from '../../../engine/units/index';
import { onOneSheet } from './one-sheet';
import { smallTables } from './small-library';

/** Invented blocks, small enough to compute in the head. `runs` counts how often each ran. */
export const runs = new Map<string, number>();
const count = (kind: string): void => {
  runs.set(kind, (runs.get(kind) ?? 0) + 1);
};

const told = { symbol: '', doc: '' };
const metres = { ...told, dimension: LENGTH, unit: 'm', tradeUnit: 'ft' } as const;
const newtons = { ...told, dimension: FORCE, unit: 'N', tradeUnit: 'lbf' } as const;

const engineResults = {
  thrust: { ...told, curve: 'airspeed', dimension: FORCE, unit: 'N', title: 'Thrust' },
  station: { ...metres, title: 'Engine station' },
} as const;

export const motor = block({
  kind: 'motor',
  role: 'engine',
  title: 'Motor',
  doc: '',
  fields: {
    station: { ...metres, unit: 'mm', tradeUnit: 'in', title: 'Station', default: -0.15, range: [-0.4, 0.1] },
    pull: { ...newtons, title: 'Static pull', default: 8, range: [0, 100] },
    lost: {
      ...newtons,
      title: 'Pull lost',
      default: Number.NaN,
      range: [0, 50],
      basis: 'A tenth of the pull.',
      advanced: true,
    },
  },
  results: engineResults,
  reasons: {},
  run(m, f, r, i, stride) {
    count('motor');
    const lost = m[f.lost + i]!;
    const pull = m[f.pull + i]! - (Number.isNaN(lost) ? 0.1 * m[f.pull + i]! : lost);
    for (const [k, speed] of AIRSPEED_KNOTS.entries()) m[r.thrust + k * stride + i] = pull - 0.1 * speed;
    m[r.station + i] = m[f.station + i]!;
    return undefined;
  },
});

export const cord = block({
  kind: 'cord',
  title: 'Cord',
  doc: '',
  fields: {
    length: { ...metres, title: 'Length', default: 18.3, range: [1, 30] },
    make: { ...told, option: ['stranded', 'solid', 'two-ply'], default: 'stranded', title: 'Make' },
  },
  results: {
    length: { ...metres, title: 'Length' },
    drag: { ...told, dimension: ONE, unit: '', title: 'Drag number' },
  },
  reasons: { refuses: 'The cord refuses.' },
  run(m, f, r, i) {
    count('cord');
    m[r.length + i] = m[f.length + i]!;
    m[r.drag + i] = m[f.length + i]! * (1 + m[f.make + i]!);
    return undefined;
  },
});

/** A lap on a cord: answers only when the thrust beats the drag number. */
export const lap = block({
  kind: 'lap',
  slow: true,
  title: 'Lap',
  doc: '',
  fields: {
    engine: { link: 'engine', results: engineResults, doc: '' },
    cord: { link: 'cord', results: cord.results, doc: '' },
    parts: { link: 'parts', results: partsResults, doc: '' },
    height: { ...metres, title: 'Height', default: 1, range: [-5, 10] },
  },
  results: {
    speed: { ...told, dimension: SPEED, unit: 'm/s', tradeUnit: 'mph', title: 'Speed' },
    pull: { ...newtons, title: 'Pull', usual: [10, 40] },
    shortfall: { ...newtons, title: 'Thrust that is missing', detail: true },
  },
  reasons: {
    'too little': 'Too little thrust: {shortfall} are missing on {cord.length} of cord at {height}. Shorten the cord.',
    outside: '',
  },
  run(m, f, r, i, stride) {
    count('lap');
    const spare = m[f.engine.thrust + 2 * stride + i]! - 0.1 * m[f.cord.drag + i]!;
    m[r.shortfall + i] = Math.max(0, -spare);
    if (spare < 0) return 'too little';
    if (m[f.height + i]! === 3) throw new RangeError('height is 3; it must not be 3');
    m[r.speed + i] = 10 + spare;
    m[r.pull + i] = (m[f.parts.mass + i]! * m[r.speed + i]! ** 2) / m[f.cord.length + i]!;
    return undefined;
  },
});

export const library: Library = {
  blocks: [motor, cord, lap] as readonly AnyBlock[],
  tables: smallTables,
};

export function documentOf(cells: readonly Cell[], head: Partial<Document> = {}): Document {
  return {
    format: 'tetherwright',
    version: VERSION,
    title: 'Small',
    drawn: '',
    date: '2026-01-01',
    invented: true,
    units: 'metric',
    sheets: onOneSheet(cells),
    rows: [],
    figures: [],
    ...head,
  };
}

export const variable = (name: string, unit: string, text: string, low = '', high = ''): Variable => ({
  name,
  title: name,
  symbol: name[0]!,
  unit,
  text,
  low,
  high,
  step: '',
});

export const variables = (name: string, ...rows: Variable[]): Cell => ({
  kind: 'variables',
  id: `id_${name}`,
  name,
  title: name,
  rows,
});

export const formula = (name: string, lines: Readonly<Record<string, string>>, unit = ''): Cell => ({
  kind: 'formula',
  id: `id_${name}`,
  name,
  title: name,
  lines: Object.entries(lines).map(([line, text]) => ({ name: line, text, unit })),
});

export const blockOf = (kind: string, fields: Readonly<Record<string, string>> = {}, name = kind): Cell => ({
  kind: 'model',
  id: `id_${name}`,
  name,
  title: name,
  of: kind,
  fields,
});

export const part = (
  name: string,
  shape: Part['shape'],
  fields: Readonly<Record<string, string>>,
  fuel = false,
): Part => ({
  name,
  title: name,
  shape,
  ...(fuel ? { fuel } : {}),
  fields,
});

export const parts = (rows: readonly Part[], fuel = '', name = 'parts'): Cell => ({
  kind: 'parts',
  id: `id_${name}`,
  name,
  title: name,
  fuel,
  rows,
});

export const tailStock = (text = 'soft'): Cell => ({
  kind: 'choice',
  id: 'id_tail_stock',
  name: 'tail_stock',
  title: 'Tail stock',
  of: 'stack',
  columns: [],
  options: [
    { name: 'soft', title: 'Soft', pattern: 'grain', layers: [{ name: 'core', material: 'soft_wood', text: '5 mm' }] },
    {
      name: 'faced',
      title: 'Faced',
      pattern: 'faced',
      layers: [
        { name: 'upper', material: 'hard_wood', text: '0.5 mm' },
        { name: 'glue', material: '', text: '40 g/m²' },
        { name: 'core', material: 'soft_wood', text: '3 mm' },
        { name: 'lower', material: 'hard_wood', text: '0.5 mm' },
      ],
    },
  ],
  text,
});

export const cordSet = (text = 'thin'): Cell => ({
  kind: 'choice',
  id: 'id_cord_set',
  name: 'cord_set',
  title: 'Cord set',
  of: 'numbers',
  columns: [
    { name: 'diameter', unit: 'mm', title: 'Diameter' },
    { name: 'strength', unit: 'N', title: 'Strength' },
  ],
  options: [
    { name: 'thin', title: 'Thin', pattern: 'plain', values: { diameter: '0.3', strength: '120 N' } },
    { name: 'thick', title: 'Thick', pattern: 'plain', values: { diameter: '0.45 mm', strength: '2 * 130 N' } },
  ],
  text,
});

/** One of everything that computes: about what a design has, in small. */
export const smallDesign = (): Document =>
  documentOf([
    { kind: 'note', id: 'id_words', name: 'words', title: 'Words', text: 'Invented.' },
    variables(
      'set_these',
      variable('engine_station', 'mm', '-150', '-190', '-130'),
      variable('tip_weight', 'g', '21 g', '0', '50'),
      variable('cord_length', 'm', '18.3 m', '15 m', '21.5 m'),
    ),
    tailStock(),
    cordSet(),
    blockOf('motor', { station: 'engine_station', pull: '8 N' }),
    blockOf('cord', { length: 'cord_length' }),
    parts(
      [
        part('engine', 'point', { mass: '210 g', x: 'engine_station' }),
        part('wing', 'solid', { volume: '2400 cm³', material: 'soft_wood', x: '95', size_y: '1000' }),
        part('stab', 'stack', { area: '3 dm²', stack: 'tail_stock', x: '480' }),
        part('fin', 'sheet', { area: '90', thickness: '3', material: 'hard_wood', x: '500', z: '40' }),
        part('tip', 'point', { mass: 'tip_weight', x: '60', y: '480' }),
        part('tank', 'point', { mass: '40 g', x: '-60' }, true),
      ],
      '0.5',
    ),
    blockOf('lap'),
    formula('sums', {
      reserve: 'cord_set.strength / lap.pull',
      tail_share: 'parts.stab.mass / parts.mass',
      tight: 'lap.pull > 10 N',
    }),
    {
      kind: 'check',
      id: 'id_cg_band',
      name: 'cg_band',
      title: 'CG',
      of: 'parts.x',
      low: '38 mm',
      high: '55',
      below: 'Nose-heavy.',
      above: 'Too far aft.',
    },
    {
      kind: 'trial_series',
      id: 'id_cg_sweep',
      name: 'cg_sweep',
      title: 'CG',
      axes: [
        { of: 'tail_stock', low: '', high: '', count: 0 },
        { of: 'engine_station', low: '', high: '', count: 5 },
      ],
      wanted: ['parts.x', 'lap.pull'],
    },
    {
      kind: 'chart',
      id: 'id_cg_chart',
      name: 'cg_chart',
      title: 'CG',
      chart: 'line',
      series: 'cg_sweep',
      across: 'engine_station',
      up: ['parts.x'],
      lines: 'tail_stock',
    },
    { kind: 'drawing', id: 'id_plan', name: 'plan', title: 'Plan' },
  ]);

/** Replaces a cell of a document by one with the same name. */
export const withCell = (document: Document, cell: Cell): Document => ({
  ...document,
  sheets: onOneSheet(cellsOf(document).map((each) => (each.name === cell.name ? cell : each))),
});
