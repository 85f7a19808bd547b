import type { AnyBlock, AnyTrace } from '../../blocks/block';
import { faultsOfLive, type Live } from '../../sheet/live';
import type { TraceAnswer } from '../../terms/index';
import { traceColumns } from '../describe/blocks';
import { causeOf } from '../run/cause';
import { type PlacedBlock, placedBlocks } from './placed-blocks';

/** A trace of the present design and of the baseline, or why there is none. `path` is cell.trace. */
export function traceOf(
  live: Live,
  baseline: Float64Array | undefined,
  blocks: ReadonlyMap<string, AnyBlock>,
  path: string,
): Omit<TraceAnswer, 'revision'> {
  const placed = placedBlocks(live.compiled, blocks);
  const at = path.lastIndexOf('.');
  const [cell, name] = [path.slice(0, at), path.slice(at + 1)];
  const found = placed.find((each) => each.name === cell);
  const trace = found?.block.traces?.[name];
  if (!found || !trace) return { ...NOWHERE, path, message: tellNowhere(path, live, placed) };
  const told = {
    path,
    title: trace.title,
    doc: trace.doc,
    columns: traceColumns(trace, live.compiled.document.units),
  };
  const present = arraysOf(found, trace, live.state.m);
  const then = baseline && arraysOf(found, trace, baseline);
  return {
    ...told,
    present: present ?? [],
    ...(then ? { baseline: then } : {}),
    ...(present ? {} : { message: tellEmpty(found, trace, live) }),
  };
}

const NOWHERE = { title: '', doc: '', columns: [], present: [] } as const;

/** A design that a block's equations refuse, or whose results have no number, has no trace. */
function arraysOf({ block, fields, results }: PlacedBlock, trace: AnyTrace, m: Float64Array) {
  // A block without results of its own has an answer as soon as its trace has one.
  const slots = Object.values(results) as number[];
  if (Object.keys(block.results).length > 0 && slots.every((slot) => Number.isNaN(m[slot]!))) return undefined;
  try {
    const columns = trace.run(m, fields, results);
    return columns && Object.keys(trace.columns).map((name) => Float64Array.from(columns[name]!));
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function tellEmpty({ results }: PlacedBlock, trace: AnyTrace, { compiled, state }: Live): string {
  const [slot] = Object.values(results) as number[];
  const cause = slot === undefined ? undefined : causeOf(compiled, state, slot);
  return cause ?? `${trace.title} has nothing to show for this design.`;
}

function tellNowhere(path: string, live: Live, placed: readonly PlacedBlock[]): string {
  const cell = path.slice(0, path.lastIndexOf('.'));
  const fault = faultsOfLive(live).find((each) => each.path === cell);
  if (fault && !placed.some((each) => each.name === cell)) return fault.message;
  const traces = placed.flatMap(({ name, block }) => Object.keys(block.traces ?? {}).map((each) => `${name}.${each}`));
  return `There is nothing called ${path} to draw. ${
    traces.length === 0 ? 'Nothing in this design has anything to draw.' : `There is ${traces.join(', ')}.`
  }`;
}
