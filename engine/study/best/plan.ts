import type { BestCell, CheckCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { named } from '../../sheet/named';
import { cellsOf } from '../../sheet/sheets';
import type { PlannedAxis } from '../run/axis';
import { titled } from '../run/titled';
import { axesOf } from '../sweep/axes';
import type { BestAxis } from './grid';

export const BEST = {
  kind: 'best_compromises',
  words: { none: 'are no best compromises', all: 'best compromises' },
} as const;

/** The value of what is at a path has to lie between these. */
export interface Limit {
  /** The check, or the result that the design stops for. */
  readonly path: string;
  /** Paths of the limits of a check; missing: none on that side. */
  readonly low?: string;
  readonly high?: string;
  /** SI; of a result that the design stops for. */
  readonly least?: number;
}

export interface BestPlan {
  readonly cell: BestCell;
  readonly axes: readonly BestAxis[];
  readonly limits: readonly Limit[];
}

/** More take longer than anybody waits where one worker flies them. */
const MOST_FIRST = 50_000;

/** Along what is looked and what is kept, or the sentence that says why nothing can be looked for. */
export function planBest(cell: BestCell, live: Live): BestPlan | string {
  const { compiled, state } = live;
  const optionsOf = new Map(compiled.names.map((name) => [name.path, name.options]));
  const axes = axesOf(cell, compiled.program, state.m, (path) => optionsOf.get(path));
  if (!axes.ok) return titled(axes.message, live);
  const first = gridOf(axes.axes);
  if (first > MOST_FIRST) {
    return titled(
      `${named(cell.name)} begins with ${first} designs. ${MOST_FIRST} are allowed: take fewer values, between which it looks closer by itself.`,
      live,
    );
  }
  const unitOf = (of: string): string =>
    compiled.names.find(({ path, settable }) => path === of && settable)?.unit ?? '';
  return {
    cell,
    axes: axes.axes.map((axis) => ({ ...axis, unit: unitOf(axis.path) })),
    limits: limitsOf(cell, live),
  };
}

export const gridOf = (axes: readonly PlannedAxis[]): number =>
  axes.reduce((product, { values }) => product * values.length, 1);

/** Every limit of the design, or those of them that are to be kept. */
function limitsOf({ keeps }: BestCell, { compiled }: Live): readonly Limit[] {
  const checks = cellsOf(compiled.document).filter((cell): cell is CheckCell => cell.kind === 'check');
  const all = [
    ...checks.flatMap(limitOf),
    ...compiled.names.flatMap(({ path, least }): Limit[] => (least?.stops ? [{ path, least: least.at }] : [])),
  ];
  return keeps ? all.filter(({ path }) => keeps.includes(path)) : all;
}

/** A check without any limit stops nothing. */
function limitOf({ name, low, high }: CheckCell): Limit[] {
  const limit: Limit = {
    path: name,
    ...(low.trim() === '' ? {} : { low: `${name}.low` }),
    ...(high.trim() === '' ? {} : { high: `${name}.high` }),
  };
  return limit.low === undefined && limit.high === undefined ? [] : [limit];
}
