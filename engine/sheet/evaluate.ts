import { type Bench, layBench } from './bench';
import { type Program, SETTLED, type Slot, WAITS } from './program';
import { wiringOf } from './wiring';

/** One design: a bench with one sample. `m[s]` is the value of slot s, `why[k]` the reason of step k. */
export interface State extends Bench {
  /** Per step: 1 where something that it follows from has moved since it ran, so that its numbers are those of a design before. */
  readonly behind: Uint8Array;
}

const layState = (program: Program): State => ({
  ...layBench(program, 1),
  behind: new Uint8Array(program.steps.length),
});

/** The same design with numbers of its own. */
export function copyState(state: State): State {
  const copy = layState(state.program);
  copy.m.set(state.m);
  copy.why.set(state.why);
  copy.behind.set(state.behind);
  return copy;
}

/** Runs everything; `needed`: see `catchUp`. */
export function startState(program: Program, needed?: Uint8Array): State {
  const state = layState(program);
  state.m.set(program.start);
  state.behind.fill(1);
  catchUp(state, needed);
  return state;
}

/**
 * Runs what follows from slots whose values are new, and what was left behind before; gives the steps that ran, in computing
 * order. `needed`: see `catchUp`.
 */
export function run(state: State, changed: Iterable<Slot>, needed?: Uint8Array): Int32Array {
  for (const k of wiringOf(state.program).downstream(changed)) state.behind[k] = 1;
  return catchUp(state, needed);
}

/**
 * Runs what is behind; gives the steps that ran. With `needed`, per step 1 where its numbers are asked for (and those of all
 * that it is computed from), slow steps that aren't and what follows from them stay behind.
 */
export function catchUp(state: State, needed?: Uint8Array): Int32Array {
  const { behind, program } = state;
  const { writer } = wiringOf(program);
  const isOld = (slot: Slot): boolean => behind[writer[slot]!] === 1;
  const ran: number[] = [];
  for (const [k, { slow, reads }] of program.steps.entries()) {
    if (behind[k] === 0 || (needed?.[k] === 0 && (slow || reads.some(isOld)))) continue;
    state.run([k], 1);
    behind[k] = 0;
    ran.push(k);
  }
  return Int32Array.from(ran);
}

export const isBehind = ({ behind }: State): boolean => behind.includes(1);

export interface Carried {
  readonly state: State;
  /** The steps that ran, in computing order. */
  readonly ran: Int32Array;
}

/**
 * Starts a program from the state of another. A step keeps its values when it computes the same (its key says so) from
 * constants with the same values and from steps that keep theirs; the others run, and so does what was behind.
 */
export function carry(old: State, program: Program): Carried {
  const state = layState(program);
  state.m.set(program.start);
  const { writer } = wiringOf(program);
  const before = new Map(old.program.steps.map((step, k) => [step.key, k]));
  const now = new Map(program.steps.map((step, k) => [step.key, k]));
  const kept = new Uint8Array(program.steps.length);
  const ran: number[] = [];

  const keeps = (k: number, was: number): boolean => {
    const reads = program.steps[k]!.reads;
    const readBefore = old.program.steps[was]!.reads;
    return reads.every((slot, r) => {
      const other = writer[slot]!;
      return other >= 0 ? kept[other] === 1 : sameConstant(state, slot, old, readBefore[r]!);
    });
  };

  for (const [k, step] of program.steps.entries()) {
    const was = before.get(step.key);
    if (was === undefined || old.behind[was] === 1 || !keeps(k, was)) {
      state.run([k], 1);
      ran.push(k);
      continue;
    }
    kept[k] = 1;
    const from = old.program.steps[was]!.writes;
    for (const [w, slot] of step.writes.entries()) state.m[slot] = old.m[from[w]!]!;
    state.why[k] = carriedWhy(old, old.why[was]!, now);
  }
  return { state, ran: Int32Array.from(ran) };
}

/** A place that a step wrote before holds no constant to compare with. */
function sameConstant(state: State, slot: Slot, old: State, was: Slot): boolean {
  return wiringOf(old.program).writer[was]! < 0 && Object.is(state.m[slot], old.m[was]);
}

/** A step that waits names another by number, which may be a new one. That other keeps its values too, so it is still there. */
function carriedWhy(old: State, why: number, now: ReadonlyMap<string, number>): number {
  return why === SETTLED || why < WAITS ? why : WAITS + now.get(old.program.steps[why - WAITS]!.key)!;
}
