import type { Live } from '../../sheet/live';
import { textAt } from '../../sheet/paths';
import { type Figures, typedValue } from '../field/numbers';
import { tipWeightIn } from '../place/index';
import { flyMany, type Tried } from './fly-many';
import type { DayBand, DaySetUp, WholeDay } from './told';

/** Weights and guides that are tried where nobody has said what is on hand, about those that the model has. */
const TIP_STEPS = [-10e-3, -5e-3, 0, 5e-3, 10e-3];
const GUIDE_STEPS = [-5e-3, 0, 5e-3];

export interface SetUps {
  readonly now: { readonly tip: number; readonly guide: number };
  readonly setUp?: DaySetUp;
  readonly bands: readonly DayBand[];
}

/** Ends of the bands of wind, m/s: of every flying day. */
const BANDS: readonly (readonly [number, number])[] = [
  [0, 2],
  [2, 4],
  [4, 6],
  [6, 8],
  [8, 10],
];
const MPH = 0.44704;
const BANDS_IN_MILES = [0, 5, 10, 15, 20].map((from) => [from * MPH, (from + 5) * MPH] as const);

/** One set-up in one wind. */
interface Design {
  readonly wind: number;
  readonly tip: number;
  readonly guide: number;
}
/** What it flies like; `keeps`: the pull stays over the floor in gusts and under the pull test. */
interface Flying extends Design {
  readonly least: number;
  readonly lapTime: number;
  readonly keeps: boolean;
}

/**
 * For the wind of the day the fastest of the weights and guides on hand whose pull stays over the floor in gusts and under the pull test;
 * for each band of wind, at its upper end, the set-up as it is where that does, else the fastest on hand. A tie goes to what changes least.
 */
export function* setUpsFor(live: Live, figures: Figures, day: WholeDay): Generator<void, SetUps, void> {
  const tipPath = movable(live, tipWeightIn(live.compiled.document, live)?.path, '.mass');
  const guidePath = movable(live, figures.path('leadouts.x'), '');
  const tip = tipPath === undefined ? Number.NaN : typedValue(live, tipPath);
  const guide = guidePath === undefined ? Number.NaN : typedValue(live, guidePath);
  const paths = { wind: movable(live, figures.path('air.wind'), '')!, tip: tipPath, guide: guidePath };
  const onHand = choices(tip, day.tips, TIP_STEPS, 0).flatMap((each) =>
    choices(guide, day.guides, GUIDE_STEPS, Number.NEGATIVE_INFINITY).map((place) => ({ tip: each, guide: place })),
  );
  const bands = live.compiled.document.units === 'metric' ? BANDS : BANDS_IN_MILES;
  const winds = [day.wind, ...bands.map(([, to]) => to)];
  const standing = yield* flown(
    live,
    figures,
    paths,
    winds.map((wind) => ({ wind, tip, guide })),
  );
  const asked = winds.filter((_, k) => k === 0 || !standing[k]!.keeps);
  const others = onHand.filter((each) => !Object.is(each.tip, tip) || !Object.is(each.guide, guide));
  const tried = yield* flown(
    live,
    figures,
    paths,
    asked.flatMap((wind) => others.map((each) => ({ wind, ...each }))),
  );
  const best = (k: number): DaySetUp | undefined => {
    const now = standing[k]!;
    const all = [now, ...tried.filter(({ wind }) => wind === winds[k])].filter(({ keeps }) => keeps);
    const [fastest] = all.toSorted((a, b) => a.lapTime - b.lapTime);
    const stays = now.keeps && (k > 0 || now.lapTime - fastest!.lapTime < SAME_LAP);
    const pick = stays ? now : fastest;
    if (pick === undefined) return undefined;
    const { least, lapTime } = pick;
    return { tip: pick.tip, guide: pick.guide, least, lapTime, longer: lapTime - now.lapTime, now: pick === now };
  };
  const setUp = best(0);
  return {
    now: { tip, guide },
    ...(setUp ? { setUp } : {}),
    bands: bands.map(([from, to], k): DayBand => {
      const found = best(k + 1);
      return { from, to, ...(found ? { setUp: found } : {}) };
    }),
  };
}

function* flown(
  live: Live,
  figures: Figures,
  paths: { readonly wind: string; readonly tip: string | undefined; readonly guide: string | undefined },
  designs: readonly Design[],
): Generator<void, readonly Flying[], void> {
  const axis = (path: string | undefined, value: (design: Design) => number): Tried[] =>
    path === undefined ? [] : [{ path, values: designs.map(value) }];
  const of = (result: string): string => figures.path(`lap.${result}`)!;
  const test = figures.path('flight.test_load')!;
  const found = yield* flyMany(
    live,
    [
      ...axis(paths.wind, ({ wind }) => wind),
      ...axis(paths.tip, (each) => each.tip),
      ...axis(paths.guide, (each) => each.guide),
    ],
    [of('least_pull'), of('least_pull_in_gust'), of('greatest_pull_met'), of('lap_time'), of('floor'), test],
  );
  return designs.map((design, k): Flying => {
    const at = (path: string): number => found.get(path)?.[k] ?? Number.NaN;
    const least = at(of('least_pull'));
    const holds = at(of('greatest_pull_met')) <= at(test);
    const keeps = holds && Math.min(least, at(of('least_pull_in_gust'))) >= at(of('floor'));
    return { ...design, least, lapTime: at(of('lap_time')), keeps };
  });
}

/** Lap times that nobody can tell apart, s. */
const SAME_LAP = 0.01;

/** Where a number is changed: at the variable that stands at its path, or there; undefined where nothing has it. */
function movable(live: Live, path: string | undefined, field: string): string | undefined {
  if (path === undefined) return undefined;
  const text = textAt(live.compiled.document, `${path}${field}`)?.trim() ?? '';
  const { names, program } = live.compiled;
  const variable = names.find((info) => info.kind === 'variable' && info.path === text)?.path;
  const at = variable ?? `${path}${field}`;
  return program.slotOf.has(at) ? at : undefined;
}

/** What is on hand and what the model has; NaN alone where there is nothing to change. */
function choices(
  now: number,
  onHand: readonly number[] | undefined,
  steps: readonly number[],
  least: number,
): readonly number[] {
  if (Number.isNaN(now)) return [Number.NaN];
  const all = onHand ?? steps.map((step) => Math.round((now + step) * 1e6) / 1e6);
  return [...new Set([now, ...all.filter((each) => each >= least && Math.abs(each - now) > 1e-9)])];
}
