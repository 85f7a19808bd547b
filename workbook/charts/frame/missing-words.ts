import { NOT_COMPUTED, type SweepProgress, withoutNumbers, withRanges } from '../../../engine/index';
import { leftOut } from './words';

/** Reasons that are named before the rest is only counted. */
const NAMED_REASONS = 2;

interface Reason {
  readonly sentences: Set<string>;
  count: number;
}

/** How many designs have no answer, and why: what differs in its numbers alone is said once, with their range. */
export function missingSentence(progress: SweepProgress): string {
  const reasons = new Map<string, Reason>();
  let missing = 0;
  for (const why of progress.why) {
    if (why === 0 || why === NOT_COMPUTED) continue;
    missing++;
    const sentence = progress.sentences[why - 1] ?? 'Reason unknown.';
    const general = withoutNumbers(sentence);
    const reason = reasons.get(general) ?? { sentences: new Set(), count: 0 };
    reason.sentences.add(sentence);
    reason.count += 1;
    reasons.set(general, reason);
  }
  if (missing === 0) return '';
  const ordered = [...reasons.values()].sort((a, b) => b.count - a.count);
  const named = ordered.slice(0, NAMED_REASONS).map(({ sentences, count }) => {
    const said = withRanges([...sentences]);
    return ordered.length === 1 ? said : `${count}: ${said}`;
  });
  const rest = ordered.slice(NAMED_REASONS).reduce((sum, { count }) => sum + count, 0);
  if (rest > 0) named.push(`${rest} for other reasons.`);
  return `${leftOut(missing, progress.total, 'designs')} ${named.join(' ')}`;
}
