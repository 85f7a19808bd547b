import { mendPath } from '../../sheet/cells/index';
import type { MendsCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { named } from '../../sheet/named';
import { cellsOf } from '../../sheet/sheets';
import { findStudy } from '../kinds/find';
import { titled } from '../run/titled';
import { type ChoiceLever, type Lever, leversOf, type NumberLever } from './levers';
import { type Flier, flierOf, halfDigit, placeFor, typedPlace } from './solve';
import { MEND_COSTS, type Mend, type MendCost, type MendsAnswer } from './told';
import { withinRoom } from './within-room';

export const MENDS = {
  kind: 'what_mends',
  words: { none: 'is no list of what mends', all: 'lists of what mends' },
} as const;

type Answer = Omit<MendsAnswer, 'revision'>;

/** Where a result is and is wanted, and what is counted as being there. */
interface Target {
  readonly cell: MendsCell;
  readonly now: number;
  readonly wanted: number;
  /** Within half of the last digit that it shows. */
  isThere(result: number): boolean;
  /** There, or on the right side of it. */
  accepts(result: number): boolean;
}

/** The same to its end without a rest. */
export function mendNow(live: Live, name: string): Answer {
  const steps = mendSteps(live, name);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}

/** Finds what would bring a result where it is wanted, each alone. Yields between one and the next. */
export function* mendSteps(live: Live, name: string): Generator<void, Answer, void> {
  const cell = findStudy<MendsCell>(live, MENDS, name);
  if (typeof cell === 'string') return faultyMends(name, cell);
  const plan = planMends(cell, live);
  if (typeof plan === 'string') return faultyMends(name, plan);
  const { target, levers } = plan;
  const { now, wanted } = target;
  const settled = { mends: name, state: 'settled', now, wanted, met: target.accepts(now) } as const;
  if (settled.met) return { ...settled, found: [] };
  const found: Found[] = [];
  for (const lever of levers) {
    found.push(...mendsBy(lever, target, live));
    yield;
  }
  return { ...settled, found: ranked(found) };
}

export const faultyMends = (mends: string, message: string): Answer => ({
  ...{ mends, state: 'fault', message, now: Number.NaN, wanted: Number.NaN, met: false, found: [] },
});

export interface MendsPlan {
  readonly target: Target;
  readonly levers: readonly Lever[];
}

/** What is wanted and everything that may bring it about, or the sentence that says why it can't be told. */
export function planMends(cell: MendsCell, live: Live): MendsPlan | string {
  const target = titled(targetOf(cell, live), live);
  if (typeof target === 'string') return target;
  const levers = leversOf(live, live.compiled.program.slotOf.get(cell.of)!);
  return { target, levers: levers.map((lever) => withinRoom(lever, live)) };
}

function targetOf(cell: MendsCell, { compiled, state }: Live): Target | string {
  const { program, names } = compiled;
  const at = (path: string): number => state.m[program.slotOf.get(path) ?? -1] ?? Number.NaN;
  const [now, wanted] = [at(cell.of), at(mendPath(cell))];
  if (Number.isNaN(wanted)) return `${named(cell.name)} does not know where ${named(cell.of)} is wanted. Type it.`;
  if (Number.isNaN(now))
    return `${named(cell.of)} has no answer now, so nothing can be told to mend it. Mend that first.`;
  const unit = names.findLast(({ path }) => path === cell.of)?.unit ?? '';
  const near = halfDigit([wanted, now], unit);
  const sense = { to: 0, least: 1, most: -1 }[cell.way];
  const isThere = (result: number): boolean => Math.abs(result - wanted) <= near;
  const accepts = (result: number): boolean => isThere(result) || (sense !== 0 && sense * (result - wanted) >= 0);
  return { cell, now, wanted, isThere, accepts };
}

/** A mend with the share of its travel that it takes, by which those that cost the same are ranked. */
interface Found {
  readonly mend: Mend;
  readonly share: number;
}

/** What one lever does; nothing where it doesn't help. */
export function mendsBy(lever: Lever, target: Target, live: Live): Found[] {
  const { of, wanted } = target.cell;
  const flier = flierOf(live, lever, of, [...wanted, ...massesIn(live)]);
  try {
    const found = lever.is === 'choice' ? byChoice(lever, target, flier) : byNumber(lever, target, flier);
    return found.map(({ mend, share }) => ({
      share,
      mend: { ...mend, effects: mend.effects.slice(0, wanted.length) },
    }));
  } finally {
    flier.finish();
  }
}

function byNumber(lever: NumberLever, { wanted, isThere }: Target, flier: Flier): Found[] {
  const place = placeFor(lever, wanted, flier);
  if (Number.isNaN(place)) return [];
  const { text, value } = typedPlace(place, lever, isThere, flier);
  const { path, from, typed, travel, most, room } = lever;
  // A part that isn't weighed stays so where the design is flown as it is.
  const flown = flier.at([value, typed]);
  const result = flown.result[0]!;
  if (!isThere(result) || value === from) return [];
  const beyond = Math.max(0, travel[0] - value, value - travel[1]);
  const effects = flown.others.map((column) => column[0]! - column[1]!);
  const mend: Mend = {
    ...{ path, from, to: value, text, result, effects, beyond, state: beyond > 0 ? 'beyond' : 'met' },
    cost: lever.cost ?? costOf(value - from),
    ...(beyond > 0 && room !== undefined ? { room } : {}),
  };
  const long = travel[1] - travel[0];
  const way = long > 0 && Number.isFinite(long) ? long : most[1] - most[0];
  return [{ mend, share: Math.abs(value - from) / way }];
}

function byChoice(lever: ChoiceLever, { cell, now, wanted, accepts }: Target, flier: Flier): Found[] {
  const { path, from, options } = lever;
  const others = options.map((_, k) => k).filter((k) => k !== from);
  const flown = flier.at([...others, from]);
  return others.flatMap((to, k): Found[] => {
    const result = flown.result[k]!;
    const met = accepts(result);
    if (!met && !(Math.abs(result - wanted) < Math.abs(now - wanted))) return [];
    const effects = flown.others.map((column) => column[k]! - column[others.length]!);
    const mend: Mend = {
      ...{ path, from, to, text: options[to]!, result, effects, beyond: 0, state: met ? 'met' : 'short' },
      cost: lever.cost ?? costOfKind(sum(effects.slice(cell.wanted.length))),
    };
    return [{ mend, share: Math.abs(result - wanted) }];
  });
}

/** Weight that comes off is a lighter part, weight that is added is lead. */
const costOf = (mass: number): MendCost => (mass < 0 ? 'lighter' : 'lead');

/** What another kind costs goes by the weight, where that changes at all. */
const costOfKind = (mass: number): MendCost => (Math.abs(mass) > LEAST_MASS ? costOf(mass) : 'size');
/** No scale of a builder tells less, kg. */
const LEAST_MASS = 0.05e-3;
const sum = (numbers: readonly number[]): number => numbers.reduce((all, each) => all + each, 0);

/** Masses of the lists of parts. */
const massesIn = ({ compiled }: Live): readonly string[] =>
  cellsOf(compiled.document).flatMap(({ kind, name }) => (kind === 'parts' ? `${name}.mass` : []));

const STATES: readonly Mend['state'][] = ['met', 'short', 'beyond'];

/** The cheapest first; of those that cost the same what reaches within its travel, and then what goes the least of it. */
export const ranked = (found: readonly Found[]): readonly Mend[] =>
  found
    .toSorted(
      (a, b) =>
        MEND_COSTS.indexOf(a.mend.cost) - MEND_COSTS.indexOf(b.mend.cost) ||
        STATES.indexOf(a.mend.state) - STATES.indexOf(b.mend.state) ||
        a.share - b.share,
    )
    .map(({ mend }) => mend);
