import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { type Guess, type GuessCell, MOST_GUESSES } from '../../../engine/index';
import { classView } from '../../store/class-view';
import { useSheet } from '../../store/context';
import { type Draft, NO_DRAFT, nextNumber } from './draft';
import { DrawnLine } from './drawn-line';
import { readGuess } from './words';

/** The guess, before the answer is shown: one, or of a class one after another, none of which the next can see. */
export function Guessing({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  const draft = useSignal<Draft>(NO_DRAFT);
  const wrong = useSignal('');
  const name = useRef<HTMLInputElement>(null);
  const asClass = classView.value;
  const { guesses } = cell;
  const info = sheet.name(cell.name);
  const change = (to: Partial<Draft>): void => {
    draft.value = { ...draft.peek(), ...to };
    wrong.value = '';
  };
  /** The guess as it is to be kept; undefined, with the reason told, where there is none. */
  const made = (): Guess | undefined => {
    const { by, text, line } = draft.peek();
    const who = asClass ? by.trim() || nextNumber(guesses) : '';
    const refuse = (message: string): undefined => {
      wrong.value = message;
    };
    if (asClass && guesses.some((each) => each.by === who))
      return refuse(`${who} has guessed already. Type another name.`);
    if (cell.way === 'line')
      return line ? { by: who, text: '', line } : refuse('Draw the line first: move one of its points at least.');
    if (cell.way === 'choice') return text === '' ? refuse('Choose one of the answers first.') : { by: who, text };
    const read = info ? readGuess(text, info, sheet.units()) : undefined;
    if (read?.ok) return { by: who, text: text.trim() };
    return refuse(read?.message ?? 'The answer is not computed yet. Wait a moment.');
  };
  const begun = (): boolean => draft.peek().text.trim() !== '' || draft.peek().line !== undefined;
  const add = (): void => {
    const guess = made();
    if (!guess) return;
    sheet.changeCell({ ...cell, guesses: [...guesses, guess] });
    draft.value = NO_DRAFT;
    name.current?.focus();
  };
  const show = (): void => {
    if (asClass && !begun() && guesses.length > 0) {
      sheet.arrange({ ...cell, shown: true });
      return;
    }
    const guess = made();
    if (guess) sheet.changeCell({ ...cell, guesses: asClass ? [...guesses, guess] : [guess], shown: true });
  };
  const entryId = `guess-${cell.id}`;
  const wrongId = `${entryId}-wrong`;
  return (
    <form
      class="guessing"
      onSubmit={(event) => {
        event.preventDefault();
        if (asClass) add();
        else show();
      }}
    >
      {asClass && (
        <label class="guess-entry">
          <span>Who guesses: a name or a number</span>
          <input
            ref={name}
            class="text-entry"
            value={draft.value.by}
            placeholder={nextNumber(guesses)}
            maxLength={30}
            autocomplete="off"
            onInput={({ currentTarget }) => change({ by: currentTarget.value })}
          />
        </label>
      )}
      {cell.way === 'number' && (
        <label class="guess-entry">
          <span>
            {asClass ? 'The guess' : 'Your guess'}
            {info?.unit ? `, in ${info.unit}` : ''}
          </span>
          <input
            id={entryId}
            class="text-entry"
            value={draft.value.text}
            aria-describedby={wrongId}
            autocomplete="off"
            spellcheck={false}
            onInput={({ currentTarget }) => change({ text: currentTarget.value })}
          />
        </label>
      )}
      {cell.way === 'choice' && (
        <fieldset class="guess-options" aria-describedby={wrongId}>
          <legend>{asClass ? 'The guess' : 'Your guess'}</legend>
          {cell.options.map(({ words }, k) => (
            <label key={k} class="tick">
              <input
                type="radio"
                name={entryId}
                checked={draft.value.text === String(k + 1)}
                onChange={() => change({ text: String(k + 1) })}
              />
              {words}
            </label>
          ))}
        </fieldset>
      )}
      {cell.way === 'line' && <DrawnLine cell={cell} line={draft.value.line} onDraw={(line) => change({ line })} />}
      <p id={wrongId} class="form-problem" role="alert">
        {wrong.value}
      </p>
      {asClass && guesses.length > 0 && <Taken cell={cell} />}
      <p class="commands">
        {asClass && (
          <button type="submit" class="word done" disabled={guesses.length >= MOST_GUESSES}>
            Take this guess
          </button>
        )}
        {asClass ? (
          <button type="button" class="word" onClick={show}>
            Show the answer
          </button>
        ) : (
          <button type="submit" class="word done">
            Show the answer
          </button>
        )}
      </p>
    </form>
  );
}

/** Who has guessed so far; what they guessed stays covered. */
function Taken({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  const { guesses } = cell;
  return (
    <div class="guess-taken">
      <p role="status">{guesses.length === 1 ? '1 guess is in.' : `${guesses.length} guesses are in.`}</p>
      <ul>
        {guesses.map(({ by }) => (
          <li key={by}>
            {by === '' ? 'no name' : by}{' '}
            <button
              type="button"
              class="word quiet"
              onClick={() => sheet.changeCell({ ...cell, guesses: guesses.filter((each) => each.by !== by) })}
            >
              Remove<span class="unseen"> the guess of {by === '' ? 'no name' : by}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
