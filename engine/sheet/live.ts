import type { Fault } from '../terms/index';
import { baselineOf, withText } from './baseline';
import { type Compiled, compile } from './compile';
import type { Document } from './document';
import { carry, run, type State, startState } from './evaluate';
import type { Program, Slot } from './program';
import { faultsOf } from './sentences';
import type { Library } from './specs';

/** A document that is being worked on, with its program and its numbers. */
export interface Live {
  readonly compiled: Compiled;
  readonly state: State;
}

export interface Edited {
  readonly live: Live;
  /** Steps of the program that ran, in computing order. */
  readonly ran: Int32Array;
  /** The program is another one: slots and names may be too. */
  readonly structure: boolean;
  /** Paths where no text can stand; nothing was done about them. */
  readonly unknown: readonly string[];
}

/** The number that a design has at a path, SI; NaN where it has none. */
export function numberAt({ compiled, state }: Live, path: string): number {
  const slot = compiled.program.slotOf.get(path);
  return slot === undefined ? Number.NaN : state.m[slot]!;
}

export function openLive(document: Document, library: Library): Live {
  const compiled = compile(document, library);
  return { compiled, state: startState(compiled.program) };
}

/** The same without what is slow and what follows from it, which stay behind. */
export function openQuick(document: Document, library: Library): Live {
  const compiled = compile(document, library);
  return { compiled, state: startState(compiled.program, quick(compiled.program)) };
}

/** Nothing slow is asked for: what `setLive` takes as needed. */
export const quick = ({ steps }: Program): Uint8Array => new Uint8Array(steps.length);

/** The same document after edits of any kind. What didn't change keeps its values. */
export function editLive(live: Live, document: Document, library: Library): Edited {
  const compiled = compile(document, library);
  const { state, ran } = carry(live.state, compiled.program);
  return { live: { compiled, state }, ran, structure: true, unknown: [] };
}

/**
 * Sets texts. Where all of them were constants and stay so, the program is kept, its numbers are changed in place and what
 * follows from them runs; else the document is compiled anew. `needed`: see `catchUp`; it holds as long as the program is kept.
 */
export function setLive(
  live: Live,
  texts: Iterable<readonly [path: string, text: string]>,
  library: Library,
  needed?: Uint8Array,
): Edited {
  const { compiled, state } = live;
  const { program } = compiled;
  const values = new Map<Slot, number>();
  const unknown: string[] = [];
  let document = compiled.document;
  let structure = false;
  for (const [path, text] of texts) {
    const changed = withText(document, path, text);
    if (!changed) {
      unknown.push(path);
      continue;
    }
    document = changed;
    const value = compiled.constant(path, text);
    if (value === undefined) structure = true;
    else values.set(program.constants.get(path)!, value);
  }
  if (structure) return { ...editLive(live, document, library), unknown };
  const moved = [...values].filter(([slot, value]) => !Object.is(state.m[slot], value));
  for (const [slot, value] of moved) {
    state.m[slot] = value;
    program.start[slot] = value;
  }
  const ran = run(
    state,
    moved.map(([slot]) => slot),
    needed,
  );
  return { live: { compiled: compiled.at(document), state }, ran, structure: false, unknown };
}

export const faultsOfLive = ({ compiled, state }: Live): readonly Fault[] => faultsOf(compiled, state);

/** The design of the baseline with its own program; undefined where the document has none. */
export function openBaseline({ compiled }: Live, library: Library): Live | undefined {
  const design = baselineOf(compiled.document);
  return design && openLive(design, library);
}

/** Values of the baseline in the slots of the present design, NaN where it has nothing there. */
export function baselineValues({ compiled }: Live, baseline: Live): Float64Array {
  const values = new Float64Array(compiled.program.size).fill(Number.NaN);
  for (const [key, { start, count }] of compiled.slotRuns) {
    const from = baseline.compiled.slotRuns.get(key);
    if (!from) continue;
    for (let k = 0; k < Math.min(count, from.count); k++) values[start + k] = baseline.state.m[from.start + k]!;
  }
  return values;
}
