import {
  type BestAnswer,
  type BestProgress,
  bound,
  inSentence,
  type NameInfo,
  noneSentences,
} from '../../../engine/index';
import { spaced } from '../shared/progress-words';

type Titles = (path: string) => string;

/** How far a search has come. */
export function searchWords(progress: BestProgress | undefined): string {
  if (!progress) return 'Working.';
  const { tried, grid, round, rounds } = progress;
  if (round === 0) return `${spaced(tried)} of ${bound(spaced(grid), 'designs')} tried`;
  return `${bound(spaced(tried), 'designs')} tried; looking closer about the best ones, step ${round} of ${rounds}`;
}

/** What was found, in sentences. */
export function foundWords(answer: BestAnswer, names: (path: string) => NameInfo | undefined): readonly string[] {
  const titleOf: Titles = (path) => names(path)?.title ?? path;
  const { state, tried, front, shown, present } = answer;
  const ended = state === 'halted' ? ['Ended before all was tried.'] : [];
  if (front === 0) return [...ended, ...noneSentences(answer, titleOf)];
  return [
    ...ended,
    `${bound(spaced(tried), 'designs')} were tried.`,
    `Of those that keep every limit none beats ${front === 1 ? 'this one' : `these ${spaced(front)}`} for ${wishes(answer, titleOf)}.`,
    ...(shown.length < front ? [`${shown.length} that lie far apart are listed.`] : []),
    presentWords(present),
  ];
}

/** "least weight and most line pull". */
function wishes({ goals }: BestAnswer, titleOf: Titles): string {
  const said = goals.map(({ of, way }) => `${way} ${inSentence(titleOf(of))}`);
  return `${said.slice(0, -1).join(', ')} and ${said.at(-1)}`;
}

function presentWords({ goals, keeps, beatenBy }: BestAnswer['present']): string {
  if (goals.some(Number.isNaN)) return 'The design as set has no answer.';
  if (!keeps) return 'The design as set breaks a limit.';
  if (beatenBy === 0) return 'None of these beats the design as set.';
  return beatenBy === 1
    ? 'One of these beats the design as set.'
    : `${spaced(beatenBy)} of these beat the design as set.`;
}
