import type { SweepProgress } from '../../../engine/index';
import type { Place } from '../../store/taker';

/** What makes the design of a sample: its place along every axis of the trial series. The last axis runs fastest. */
export function designAt({ axes }: Pick<SweepProgress, 'axes'>, sample: number): readonly Place[] {
  let rest = sample;
  return axes
    .toReversed()
    .map(({ path, values }) => {
      const at = rest % values.length;
      rest = Math.floor(rest / values.length);
      return { path, si: values[at]! };
    })
    .toReversed();
}
