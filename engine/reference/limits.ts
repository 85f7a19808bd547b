import type { AnyBlock } from '../blocks/block';
import type { Chapter } from './chapter';

/** What is not modelled, of all blocks on one page. */
export function limitsChapter(blocks: readonly AnyBlock[]): Chapter {
  return {
    id: 'not-modelled',
    group: 'Reading this',
    title: 'What is not modelled',
    pieces: [
      {
        kind: 'text',
        text: 'Results are estimates for comparing one set-up with another. The pull test, the rule book and the field decide, never a number on a screen.',
      },
      {
        kind: 'table',
        title: 'Left out, by piece',
        columns: ['block', 'left out'],
        rows: blocks.flatMap((block) => (block.theory?.notModelled ?? []).map((sentence) => [block.title, sentence])),
      },
    ],
  };
}
