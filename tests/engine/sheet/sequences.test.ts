import { describe, expect, test } from 'vitest';
import type { Document } from '../../../engine/sheet/document';
import { catchUp } from '../../../engine/sheet/evaluate';
import { type Edited, editLive, type Live, openLive, setLive } from '../../../engine/sheet/live';
import { neededFor } from '../../../engine/sheet/needed';
import type { Program, Slot } from '../../../engine/sheet/program';
import { applyChanges, type Change } from '../../../engine/sheet/transaction';
import { cases } from '../../cases';
import { randomEdit } from './edits';
import { type Random, randomFrom } from './random';
import { library, smallDesign } from './small';

const SEQUENCES = cases(300);
const EDITS = 12;

/** Texts only: what the page sends while a finger is down. Anything else is an edit of structure. `needed`: what may not wait then. */
function edit(live: Live, document: Document, changes: readonly Change[], needed?: Uint8Array): Edited {
  const texts = changes.flatMap((change) => (change.change === 'text' ? [[change.path, change.text] as const] : []));
  return texts.length === changes.length ? setLive(live, texts, library, needed) : editLive(live, document, library);
}

/** While a finger is down some steps are shown, whichever; undefined where none is. */
function stepsSeen(live: Live, random: Random): readonly number[] | undefined {
  if (random.below(3) > 0) return undefined;
  return [...live.compiled.program.steps.keys()].filter(() => random.below(4) === 0);
}

/** Keys of the steps that are behind. */
function keysBehind({ compiled, state }: Live): Set<string> {
  return new Set(compiled.program.steps.flatMap(({ key }, k) => (state.behind[k] === 1 ? [key] : [])));
}

/** Where each slot of a design lies by a name that is the same in every program: "parts.fin#row+3". */
function namesOfSlots({ compiled }: Live): string[] {
  const names: string[] = [];
  for (const [key, { start, count }] of compiled.slotRuns)
    for (let k = 0; k < count; k++) names[start + k] = `${key}+${k}`;
  return names;
}

/** Value of every slot that no step writes, by name. Must be taken before the edit, which changes numbers in place. */
function constantsOf(live: Live): Map<string, number> {
  const { program } = live.compiled;
  const written = new Set(program.steps.flatMap((step) => step.writes));
  return new Map(namesOfSlots(live).flatMap((name, slot) => (written.has(slot) ? [] : [[name, live.state.m[slot]!]])));
}

/**
 * The steps that have to run, found the slow way: a step runs if it is new, if a constant that it reads is new or has
 * another value, if a step that it reads from runs, or if it was left behind before. Asks upward from each step, where the engine walks downward.
 */
function stepsThatMustRun(
  before: ReadonlyMap<string, number>,
  oldKeys: ReadonlySet<string>,
  wereBehind: ReadonlySet<string>,
  live: Live,
): Set<number> {
  const { program } = live.compiled;
  const names = namesOfSlots(live);
  const writers = new Map<Slot, number>(program.steps.flatMap((step, k) => step.writes.map((slot) => [slot, k])));
  const answers = new Map<number, boolean>();
  const must = (k: number): boolean => {
    const known = answers.get(k);
    if (known !== undefined) return known;
    const step = program.steps[k]!;
    const answer =
      !oldKeys.has(step.key) ||
      wereBehind.has(step.key) ||
      step.reads.some((slot) => {
        const writer = writers.get(slot);
        return writer === undefined ? !same(before.get(names[slot]!), live.state.m[slot]!) : must(writer);
      });
    answers.set(k, answer);
    return answer;
  };
  return new Set([...program.steps.keys()].filter(must));
}

const same = (a: number | undefined, b: number): boolean => a !== undefined && Object.is(a, b);

const keysOf = (program: Program): Set<string> => new Set(program.steps.map((step) => step.key));

/** First slot in which two states of one program differ, by name; undefined where none does. What is behind isn't compared. */
function firstDifference(live: Live, fresh: Live): string | undefined {
  const { steps } = live.compiled.program;
  const old = new Set(steps.flatMap(({ writes }, k) => (live.state.behind[k] === 1 ? writes : [])));
  const slot = live.state.m.findIndex((value, k) => !old.has(k) && !Object.is(value, fresh.state.m[k]));
  return slot < 0 ? undefined : `${namesOfSlots(live)[slot]}: ${live.state.m[slot]} and not ${fresh.state.m[slot]}`;
}

function play(seed: number): void {
  const random = randomFrom(seed);
  let document = smallDesign();
  let live = openLive(document, library);
  const done: { before: Document; inverse: readonly Change[] }[] = [];
  for (let k = 0; k < EDITS; k++) {
    const last = random.below(5) === 0 ? done.pop() : undefined;
    const { says, changes } = last ? { says: 'undo', changes: last.inverse } : randomEdit(document, random);
    const where = `edit ${k} (${says})`;
    const applied = applyChanges(document, changes, { frozen: true });
    if (last) expect(applied.document, where).toEqual(last.before);
    else done.push({ before: document, inverse: applied.inverse });
    const before = constantsOf(live);
    const oldKeys = keysOf(live.compiled.program);
    const wereBehind = keysBehind(live);
    const seen = stepsSeen(live, random);
    const edited = edit(live, applied.document, changes, seen && neededFor(live.compiled.program, seen));
    ({ live } = edited);
    document = applied.document;
    expect(live.compiled.document, where).toEqual(document);

    const fresh = openLive(document, library);
    expect(live.compiled.program.shape, where).toBe(fresh.compiled.program.shape);
    expect(firstDifference(live, fresh), where).toBeUndefined();
    const { behind } = live.state;
    const known = (why: Uint16Array): number[] => [...why].map((reason, k) => (behind[k] === 1 ? -1 : reason));
    expect(known(live.state.why), where).toEqual(known(fresh.state.why));
    expect(new Set([...edited.ran, ...stepsBehind(live)]), where).toEqual(
      stepsThatMustRun(before, oldKeys, wereBehind, live),
    );
    if (edited.structure || !seen) expect(stepsBehind(live), where).toEqual([]);
    else expect(waitsWrongly(live, seen), where).toEqual([]);
  }
  catchUp(live.state);
  expect(stepsBehind(live)).toEqual([]);
  const fresh = openLive(document, library);
  expect(firstDifference(live, fresh)).toBeUndefined();
  expect([...live.state.why]).toEqual([...fresh.state.why]);
}

const stepsBehind = ({ state }: Live): number[] => [...state.behind.keys()].filter((k) => state.behind[k] === 1);

/** Steps that are behind though they are seen, or neither slow nor read from what is behind, or read by what is not. */
function waitsWrongly({ compiled, state }: Live, seen: readonly number[]): string[] {
  const { steps } = compiled.program;
  const old = new Set(stepsBehind({ compiled, state }).flatMap((k) => steps[k]!.writes));
  return steps.flatMap((step, k) => {
    const onOld = step.reads.some((slot) => old.has(slot));
    if (state.behind[k] === 0) return onOld ? [`${step.path} is fresh of old numbers`] : [];
    if (seen.includes(k)) return [`${step.path} is seen and old`];
    return step.slow || onOld ? [] : [`${step.path} waits for nothing`];
  });
}

describe('after every edit all slots but those that wait are those of a full recompute, and exactly the steps downstream ran or wait', () => {
  for (let first = 0; first < SEQUENCES; first += 20) {
    test(`seeds ${first} to ${first + 19}`, { timeout: 60_000 }, () => {
      for (let seed = first; seed < first + 20; seed++) {
        try {
          play(seed);
        } catch (error) {
          throw new Error(`seed ${seed}: ${error instanceof Error ? error.message : error}`, { cause: error });
        }
      }
    });
  }
});
