import type { GuessCell } from '../../../engine/index';
import { GuessPicture } from '../../charts/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { Said } from './said';
import { guessedOf } from './series';
import { Strip } from './strip';
import { lineSentence, numberSentence, rightOption } from './words';

/** The answer of the design beside what was guessed, why it is so, and what to try. */
export function Answered({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  return (
    <div class="guess-answer">
      {cell.way === 'number' && <NumberAnswer cell={cell} />}
      {cell.way === 'choice' && <ChoiceAnswer cell={cell} />}
      {cell.way === 'line' && <LineAnswer cell={cell} />}
      {cell.why.trim() !== '' && (
        <>
          <h3>Why</h3>
          <Said cell={cell} words="why" />
        </>
      )}
      {cell.try_this.trim() !== '' && (
        <>
          <h3>Try this on your model</h3>
          <Said cell={cell} words="try_this" />
        </>
      )}
      <p class="commands">
        <button
          type="button"
          class="word"
          onClick={() => {
            const { shown: _, ...rest } = cell;
            sheet.changeCell({ ...rest, guesses: [] });
          }}
        >
          Guess again
        </button>
      </p>
    </div>
  );
}

function NumberAnswer({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  const info = sheet.name(cell.name);
  if (!info) return null;
  const answer = sheet.value(cell.name);
  return (
    <>
      <p class="guess-result" role="status">
        {numberSentence(cell, info, answer, sheet.units())}
      </p>
      {cell.guesses.length > 1 && <Strip cell={cell} info={info} answer={answer} units={sheet.units()} />}
    </>
  );
}

function ChoiceAnswer({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  const right = rightOption(cell, sheet.value);
  const [only] = cell.guesses;
  const alone = cell.guesses.length === 1 && only!.by === '';
  const met = alone && only!.text === String(right + 1);
  const words = cell.options[right]?.words;
  return (
    <>
      <p class="guess-result" role="status">
        {words === undefined
          ? 'None of these answers is right for this design.'
          : `${met ? 'Yes' : 'It is'}: ${words}.`}
      </p>
      <ul class="guess-choices">
        {cell.options.map((option, k) => {
          const who = cell.guesses.filter(({ text }) => text === String(k + 1)).map(({ by }) => by || 'your guess');
          return (
            <li key={k} data-right={k === right}>
              <span aria-hidden="true">{k === right ? '✓' : ''}</span>
              <span>
                {option.words}
                {k === right && <span class="unseen"> (the answer)</span>}
              </span>
              <span class="guess-who">{who.join(', ')}</span>
            </li>
          );
        })}
      </ul>
    </>
  );
}

function LineAnswer({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => (cell.series === '' ? () => {} : sheet.sweeps.watch(cell.series)), cell.series);
  const guessed = guessedOf(cell, sheet, true);
  const sentence = guessed ? lineSentence(cell, guessed.up, Array.from(guessed.ys)) : '';
  const lines = guessed?.lines.map(({ by, heights }) => ({ by: by === '' ? 'your line' : by, heights })) ?? [];
  return (
    <div ref={watched} class="guess-room" aria-busy={!guessed}>
      <p class="guess-result" role="status">
        {sentence}
      </p>
      {guessed && (
        <GuessPicture
          of={{ ...guessed, lines }}
          says={`${guessed.up.title} against ${guessed.across.title}. ${sentence}`}
        />
      )}
    </div>
  );
}
