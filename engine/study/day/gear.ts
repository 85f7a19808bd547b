import type { Live } from '../../sheet/live';
import { type Figures, typedValue } from '../field/numbers';
import { flyMany } from './fly-many';
import type { DayCard, Ground } from './told';

/** Ground drag that would tip the model over that of the ground: common practice, no source. */
const WANTED = 1.5;
/** Places of the axle that are looked at, m from where it is. */
const STEP = 0.005;
const STEPS = 16;

/** Nose-over margin on this ground, and the farthest aft station of the axle that keeps what is wanted of it. */
export function* gearFor(live: Live, figures: Figures, ground: Ground): Generator<void, DayCard['gear'], void> {
  const margin = figures.value(`gear.margin_${ground}`);
  const path = figures.path('body.wheel_x');
  const nothing = { margin, axle: Number.NaN, wanted: Number.NaN, marginWanted: WANTED };
  if (path === undefined || Number.isNaN(margin)) return nothing;
  const axle = typedValue(live, path);
  const places = Array.from({ length: 2 * STEPS + 1 }, (_, k) => axle + (k - STEPS) * STEP);
  const result = figures.path(`gear.margin_${ground}`)!;
  const margins = (yield* flyMany(live, [{ path, values: places }], [result])).get(result)!;
  const keeps = [...places.keys()].filter((k) => margins[k]! >= WANTED).map((k) => places[k]!);
  return { margin, axle, wanted: keeps.length === 0 ? Number.NaN : Math.max(...keeps), marginWanted: WANTED };
}
