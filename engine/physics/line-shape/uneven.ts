import { positive } from '../domain';
import { bowOf } from './bow';
import type { TurningBundle } from './load';
import { type LineEnds, type LineShape, lineShape } from './shape';

/** The two lines that work the elevator, pulled unevenly. */
export interface UnevenPair {
  readonly harder: LineShape;
  readonly easier: LineShape;
  /** How much more the harder pulled line stretches, m. */
  readonly stretch: number;
  /** How much less of its length it spends on its bow, m. */
  readonly bow: number;
}

/**
 * Two equal lines between the same ends with the pulls T/n ± ΔT/2 at the guide: what their handle ends come apart,
 *
 *   Δl = (∫ T ds/EA − b) of the harder less the same of the easier,  b = length along the bow − straight distance
 *
 * `bundle` are all n lines with their pull T in `ends`, held at the handle's place; ΔT (N) pull of the harder line less that of the
 * easier, at the guide; EA of one line (N). Undefined where the easier line has no pull left.
 * Derivation: two lines of one length unstretched, each with a shape of its own.
 */
export function unevenPair(
  bundle: TurningBundle,
  ends: LineEnds,
  difference: number,
  stiffness: number,
): UnevenPair | undefined {
  const mean = ends.pull / positive('number of lines', bundle.count);
  if (!(mean - difference / 2 > 0)) return undefined;
  const one = { ...bundle, count: 1 };
  const shapeOf = (pull: number): LineShape => lineShape(one, { ...ends, pull });
  const harder = shapeOf(mean + difference / 2);
  const easier = difference === 0 ? harder : shapeOf(mean - difference / 2);
  return {
    ...{ harder, easier },
    stretch: (harder.pullLength - easier.pullLength) / positive('line stiffness', stiffness),
    bow: bowOf(easier, bundle.rate).extra - bowOf(harder, bundle.rate).extra,
  };
}
