import { bound } from '../../units/index';
import type { BestAnswer } from './told';

/** Limits that are told by name. */
const MOST_NAMED = 3;

type Counts = Pick<BestAnswer, 'tried' | 'unanswered' | 'reason' | 'broken'>;

/** Why no design is left, where none is: what keeps them out, the most frequent first. */
export function noneSentences(
  { tried, unanswered, reason, broken }: Counts,
  titleOf: (path: string) => string,
): readonly string[] {
  const amount = (count: number): string => (count === tried ? 'All' : String(count));
  return [
    `None of the ${bound(String(tried), 'designs')} that were tried keeps every limit.`,
    ...broken
      .slice(0, MOST_NAMED)
      .map(({ path, count }) => `${amount(count)} of them ${count === 1 ? 'breaks' : 'break'} “${titleOf(path)}”.`),
    ...(unanswered === 0
      ? []
      : [
          `${amount(unanswered)} of them ${unanswered === 1 ? 'has' : 'have'} no answer, most often for this reason: ${reason}`,
        ]),
  ];
}
