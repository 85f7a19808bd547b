import { CLEAR, FARTHEST_OFF } from './limits';
import type { Pitches } from './pitches';
import { standingOf, teethOf } from './teeth';
import type { Unheard } from './told';

/** What speaks against a tone of `mean` Hz that was followed through these pieces; nothing where it holds. */
export function against(pitches: Pitches, pieces: readonly number[], mean: number): Unheard | undefined {
  const { clear, tone, spectra, track, harmonics } = pitches;
  if (pieces.reduce((sum, k) => sum + clear[k]!, 0) < CLEAR * pieces.length) return 'no tone';
  if (Math.abs(Math.log(mean / tone)) > Math.log(FARTHEST_OFF)) return 'elsewhere';
  const standing = standingOf(teethOf(spectra, track.pitch, pieces, harmonics));
  if (standing === 'right') return undefined;
  return standing === 'none' ? 'no tone' : standing;
}
