import type { Part, PartsCell, WeighingCell } from '../../sheet/document';
import { carry } from '../../sheet/evaluate';
import { type Live, numberAt } from '../../sheet/live';
import { cellsOf, withPiece } from '../../sheet/sheets';
import { isRemade } from '../../sheet/weighed-as';
import { type PlannedAxis, typedSlot } from '../run/axis';
import { planCore } from '../run/plan';
import type { PartWeighing } from './told';

export const WEIGHING = {
  kind: 'weighing',
  words: { none: 'is no bench', all: 'benches' },
} as const;

/** A part that can be weighed. */
export interface Benched {
  readonly path: string;
  readonly state: PartWeighing;
}

/**
 * The design with other parts on the scale: first as the parts came on it, one more with each sample; then as it stands with one
 * of those on it besides that have not been, at what it is estimated to weigh.
 */
export type WeighingPlan = ReturnType<typeof planWeighing>;

export function planWeighing(cell: WeighingCell, live: Live) {
  const table = cellsOf(live.compiled.document).find(
    (each): each is PartsCell => each.kind === 'parts' && each.name === cell.parts,
  )!;
  const benched = table.rows.flatMap((part) => (part.fuel ? [] : benchedOf(part, table, live)));
  const came = inOrder(benched, cell.order);
  const open = benched.filter(({ state }) => state !== 'weighed');
  const { compiled, state } = asOpen(live, table, open);
  const { program } = compiled;
  const at = (path: string): number => state.m[program.slotOf.get(path)!]!;
  const total = came.length + 1 + open.length;
  const axes = benched.map(({ path, state: now }): PlannedAxis => {
    const slot = typedSlot(`${path}.weighed`, program);
    const scale = now === 'weighed' ? state.m[slot]! : at(`${path}.estimate`);
    const from = now === 'weighed' ? 1 + came.findIndex((each) => each.path === path) : total;
    const alone = came.length + 1 + open.findIndex((each) => each.path === path);
    const onScale = (k: number): boolean => (now === 'weighed' ? k >= from : k === alone);
    const values = Float64Array.from({ length: total }, (_, k) => (onScale(k) ? scale : Number.NaN));
    return { path: `${path}.weighed`, slot, values, choice: false };
  });
  const start = { revision: 0, name: cell.name, values: state.m, why: state.why };
  const core = planCore(program, start, axes, [`${table.name}.x`, `${table.name}.x_sd`]);
  return { kind: 'weighing' as const, ...core, axes, key: '', compiled, table, benched, came, open, total };
}

/** What weighs nothing, a nose weight that isn't there, is not for the scale. */
function benchedOf(part: Part, table: PartsCell, live: Live): Benched[] {
  const { compiled, state } = live;
  const path = `${table.name}.${part.name}`;
  const slot = compiled.program.slotOf.get(`${path}.mass`);
  const isWeighed = (part.fields.weighed ?? '').trim() !== '';
  if (slot === undefined || (!isWeighed && state.m[slot] === 0)) return [];
  return [
    { path, state: !isWeighed ? 'open' : isRemade(path, part, (of) => numberAt(live, of)) ? 'remade' : 'weighed' },
  ];
}

/** Weighed parts as they came: what the list doesn't name first. */
function inOrder(benched: readonly Benched[], order: readonly string[]): readonly Benched[] {
  const weighed = benched.filter(({ state }) => state === 'weighed');
  return weighed.toSorted((a, b) => order.indexOf(a.path) - order.indexOf(b.path));
}

/** The design in which no part is weighed as something else: what is on the scale then counts. */
function asOpen(live: Live, table: PartsCell, open: readonly Benched[]): Live {
  const { compiled, state } = live;
  const remade = new Set(open.filter((each) => each.state === 'remade').map(({ path }) => path));
  if (remade.size === 0) return live;
  const rows = table.rows.map((part) => {
    if (!remade.has(`${table.name}.${part.name}`)) return part;
    const { weighed_as: _, ...rest } = part;
    const { weighed: __, ...fields } = part.fields;
    return { ...rest, fields };
  });
  const own = compiled.anew(withPiece(compiled.document, { ...table, rows }));
  return { compiled: own, state: carry(state, own.program).state };
}
