import { type GuessCell, guessWordsName, noteFormulas, saidPath } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { noteHtml } from '../note/html';
import { RowFaults } from '../shared/row-faults';

type Words = Parameters<typeof guessWordsName>[1];

/** Words of a guess with the numbers of the design in them. */
export function Said({ cell, words }: { cell: GuessCell; words: Words }) {
  const sheet = useSheet();
  const name = guessWordsName(cell, words);
  const text = cell[words];
  if (text.trim() === '') return null;
  return (
    <>
      <div class="prose" dangerouslySetInnerHTML={{ __html: noteHtml({ name, text }, sheet) }} />
      <RowFaults paths={noteFormulas(text).map((_, k) => saidPath(name, k))} />
    </>
  );
}
