import {
  cellsOf,
  type Document,
  type EngineService,
  type NameInfo,
  type Snapshot,
  type SweepRequest,
  textAt,
  toSI,
} from '../../../engine/index';
import { ONE } from '../../../engine/units/index';
import { onOneSheet } from '../../engine/sheet/one-sheet';
import { smallSheet } from './small-sheet';

const names: readonly NameInfo[] = ['tip_weight', 'line_length'].map((path, slot) => ({
  path,
  slot,
  kind: 'variable',
  cell: 'c2',
  title: path.replace('_', ' '),
  symbol: '',
  dimension: ONE,
  unit: path === 'tip_weight' ? 'g' : 'm',
  suffix: '',
  doc: '',
  settable: true,
}));

/** Reads the two variables of the small sheet, and a text that is no number as a fault. */
export function smallEngine() {
  const calls: string[] = [];
  const asked: SweepRequest[] = [];
  let document = smallSheet;
  let revision = 0;
  let told = false;
  const read = (path: string, text: string): number => {
    const [number, unit] = text.split(' ') as [string, string];
    return toSI(Number(number), unit ?? names.find((info) => info.path === path)!.unit);
  };
  const snapshot = (): Snapshot => {
    const values = new Float64Array(names.map(({ path }) => read(path, textAt(document, path)!)));
    const kept = names.map(({ path }) => read(path, document.baseline?.[path] ?? textAt(document, path)!));
    const faults = names
      .filter(({ slot }) => Number.isNaN(values[slot]))
      .map(({ path, cell }) => ({ cell, path, state: 'fault' as const, message: `${path} is no number.` }));
    const answer: Snapshot = {
      revision: ++revision,
      shape: 'small',
      names: told ? undefined : names,
      values,
      baseline: document.baseline && new Float64Array(kept),
      faults,
      drawing: [],
    };
    told = true;
    return answer;
  };
  const engine: EngineService = {
    describe: async () => ({ blocks: [], cautions: [], tables: [] }),
    async open(next) {
      calls.push('open');
      document = next;
      return snapshot();
    },
    async set(texts) {
      calls.push(`set ${texts.map(([path, text]) => `${path}=${text}`).join(' ')}`);
      for (const [path, text] of texts) document = edited(document, path, text);
      return snapshot();
    },
    async sweep(request) {
      asked.push(request);
    },
    stop: async () => {},
    mends: async (mends) => ({ ...{ revision, mends, state: 'settled', met: true, found: [] }, now: 0, wanted: 0 }),
    best: async (best) => ({
      ...{ revision, best, state: 'settled', axes: [], goals: [], wanted: [], tried: 0, unanswered: 0 },
      ...{ reason: '', broken: [], front: 0, shown: [], beaten: [] },
      present: { goals: [], keeps: true, beatenBy: 0 },
    }),
    haltBest: async () => {},
    reconcile: async () => ({ state: 'unmeasured', differs: [], culprits: [] }),
    weighing: async (weighing) => ({
      ...{ revision, weighing, state: 'settled', parts: [], next: '', history: [], done: 0, wanted: 0, within: 0 },
      ...{ weighed: { mass: 0, x: 0, y: 0 }, finished: { mass: 0, x: 0, band: 0 } },
    }),
    variantGhosts: async () => ({ revision, variants: [] }),
    table: async () => ({
      state: 'waits',
      columns: [],
      total: 0,
      rows: 0,
      from: 0,
      values: [],
      samples: new Uint32Array(0),
      reasons: [],
      present: -1,
      exact: false,
      causes: [],
    }),
    tableFile: async () => [],
    trace: async (path) => ({ revision: 0, path, title: '', doc: '', columns: [], present: [] }),
    fit: async (fit) => ({
      ...{ revision: 0, fit, state: 'stopped', factors: [], correlation: [], numbers: [], freedom: 0, iterations: 0 },
      ...{ scatter: Number.NaN, scatterBefore: Number.NaN, errors: 'stated', takeable: false, sentences: [] },
    }),
    flown: async (log) => ({ revision: 0, log, state: 'stopped', numbers: [], leftOut: [] }),
    dayCard: async () => ({ ok: false, message: '' }),
    trim: async () => ({ ok: false, message: '' }),
    templates: async () => [],
    madeOf: async () => [],
    forgotten: async () => [],
    studies: async () => [],
    lessons: async () => [],
    placeStudy: async () => ({ ok: false, message: 'No study here.' }),
    chartOffer: async () => ({ ok: false, message: 'No chart here.' }),
    makeChart: async () => ({ ok: false, message: 'No chart here.' }),
    swapKind: async () => ({ ok: false, message: 'No other kind here.' }),
    makeVariable: async () => ({ ok: false, message: 'No variable here.' }),
    check: async () => ({ ok: true, value: 0 }),
  };
  return { engine, calls, asked };
}

function edited(document: Document, path: string, text: string): Document {
  const cells = cellsOf(document).map((cell) =>
    cell.kind === 'variables'
      ? { ...cell, rows: cell.rows.map((row) => (row.name === path ? { ...row, text } : row)) }
      : cell,
  );
  const kept = document.baseline?.[path] ?? textAt(document, path)!;
  return {
    ...document,
    sheets: onOneSheet(cells),
    baseline: document.baseline && { ...document.baseline, [path]: kept },
  };
}
