import { NOT_COMPUTED, type SweepProgress } from '../../../engine/index';
import { leftOut } from './words';

/** Reasons that are named before the rest is only counted. */
const NAMED_REASONS = 2;

/** How many designs have no answer, and why. */
export function missingSentence(progress: SweepProgress): string {
  const counts = new Map<number, number>();
  let missing = 0;
  for (const why of progress.why) {
    if (why === 0 || why === NOT_COMPUTED) continue;
    missing++;
    counts.set(why, (counts.get(why) ?? 0) + 1);
  }
  if (missing === 0) return '';
  const bySentence = new Map<string, number>();
  for (const [why, n] of counts) {
    const sentence = progress.sentences[why - 1] ?? 'Reason unknown.';
    bySentence.set(sentence, (bySentence.get(sentence) ?? 0) + n);
  }
  const ordered = [...bySentence].sort((a, b) => b[1] - a[1]);
  const named = ordered
    .slice(0, NAMED_REASONS)
    .map(([sentence, n]) => (ordered.length === 1 ? sentence : `${n}: ${sentence}`));
  const rest = ordered.slice(NAMED_REASONS).reduce((sum, [, n]) => sum + n, 0);
  if (rest > 0) named.push(`${rest} for other reasons.`);
  return `${leftOut(missing, progress.total, 'designs')} ${named.join(' ')}`;
}
