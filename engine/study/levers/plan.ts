import { leverPath } from '../../sheet/cells/index';
import type { LeverRow, LeversCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { named } from '../../sheet/named';
import { wiringOf } from '../../sheet/wiring';
import type { LeverChange, LeversTold } from '../../terms/index';
import { type PlannedAxis, typedSlot } from '../run/axis';
import { type PlanOf, planCore } from '../run/plan';
import { titled } from '../run/titled';

export interface LeversPlan extends PlanOf<'what_helps'> {
  /** What each sample changes, and what the results are without a change. */
  readonly levers: LeversTold;
}

/**
 * One design for each change from the design as it stands, everything else as it is; or the sentence that says why it can't be
 * told. What a compiled document has found wrong with the cell is not looked for again.
 */
export const planLevers = (cell: LeversCell, live: Live, revision: number): LeversPlan | string =>
  titled(plan(cell, live, revision), live);

function plan(cell: LeversCell, live: Live, revision: number): LeversPlan | string {
  const { compiled, state } = live;
  const changes: LeverChange[] = [];
  for (const [k, row] of cell.rows.entries()) {
    const found = changesOf(cell, row, k, live);
    if (typeof found === 'string') return found;
    changes.push(...found);
  }
  if (changes.length === 0)
    return `${named(cell.name)} has nothing to change: what it may be changed to is what it is already.`;
  const axes = axesOf(changes, live);
  const hidden = hiddenChange(axes, live);
  if (hidden !== undefined) return hidden;
  const start = { revision, name: cell.name, values: state.m, why: state.why };
  const core = planCore(compiled.program, start, axes, cell.wanted);
  return {
    ...{ kind: 'what_helps', ...core, axes, key: JSON.stringify(changes) },
    levers: { changes, present: core.wanted.map(({ slot }) => core.base[slot]!) },
    order: Uint32Array.from(changes, (_, k) => k),
    coarse: changes.length,
  };
}

function changesOf(cell: LeversCell, row: LeverRow, k: number, live: Live): LeverChange[] | string {
  const { of, way } = row;
  const { program, names } = live.compiled;
  const from = live.state.m[typedSlot(of, program)]!;
  if (Number.isNaN(from)) return `${named(of)} has no value to be changed from. Type one.`;
  const change = (how: LeverChange['way'], to: number): LeverChange => ({ row: k, path: of, way: how, from, to });
  const options = names.find(({ path, settable }) => path === of && settable)?.options;
  if (options) {
    const tried = row.options?.map((name) => options.indexOf(name)) ?? [...options.keys()];
    return tried.filter((option) => option !== from).map((option) => change('to', option));
  }
  const typed = live.state.m[program.slotOf.get(leverPath(cell, k))!]!;
  if (Number.isNaN(typed))
    return `${named(cell.name)} does not know how ${named(of)} is changed: look at “${row.text}” there.`;
  if (way === 'to') return [change('to', typed)];
  if (/°[CF]/.test(row.text)) {
    return `${row.text.trim()} is a point on a scale. By how much ${named(of)} is changed is written in K: “2 K”.`;
  }
  if (typed <= 0) {
    return `${named(cell.name)} changes ${named(of)} by “${row.text}”. Type an amount greater than 0; whether it goes up or down is said beside it.`;
  }
  return [
    ...(way === 'down' ? [] : [change('up', from + typed)]),
    ...(way === 'up' ? [] : [change('down', from - typed)]),
  ];
}

/** One axis for each thing that is changed, which holds its present value but in the designs that change it. */
function axesOf(changes: readonly LeverChange[], { compiled }: Live): PlannedAxis[] {
  const paths = [...new Set(changes.map(({ path }) => path))];
  return paths.map((path) => ({
    path,
    slot: typedSlot(path, compiled.program),
    values: Float64Array.from(changes, (change) =>
      change.path === path ? change.to : changes.find((each) => each.path === path)!.from,
    ),
    choice: false,
  }));
}

/** A formula whose place a change takes no longer follows what it names: that may not be changed too, unseen. */
function hiddenChange(axes: readonly PlannedAxis[], { compiled }: Live): string | undefined {
  const { writer, downstream } = wiringOf(compiled.program);
  for (const { path, slot } of axes) {
    const step = writer[slot]!;
    if (step < 0) continue;
    const other = axes.find((each) => each.slot !== slot && downstream([each.slot]).includes(step));
    if (other) {
      return `${named(path)} is computed from ${named(other.path)}, and both are to be changed: one would hide the other. Remove one of them.`;
    }
  }
  return undefined;
}
