import type { GuessCell } from '../../../engine/index';
import { GuessPicture } from '../../charts/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { levelLine } from './draft';
import { guessedOf } from './series';

interface Props {
  readonly cell: GuessCell;
  readonly line: readonly number[] | undefined;
  onDraw(line: readonly number[]): void;
}

/** The chart on which a line is drawn; the lines of others don't stand on it. */
export function DrawnLine({ cell, line, onDraw }: Props) {
  const sheet = useSheet();
  const watched = useOnScreen(() => (cell.series === '' ? () => {} : sheet.sweeps.watch(cell.series)), cell.series);
  const guessed = guessedOf({ ...cell, guesses: [] }, sheet, false);
  return (
    <div ref={watched} class="guess-room" aria-busy={!guessed}>
      {guessed && (
        <>
          <GuessPicture
            of={guessed}
            says={`Draw ${guessed.up.title} against ${guessed.across.title}: nine points from left to right.`}
            drawing={{ heights: line ?? levelLine(guessed.now.y), onDraw }}
          />
          <p class="aside">
            Draw over the chart with mouse, pen or finger. By keys: left and right go from point to point, up and down
            move it. The ring is your model as it is now.
          </p>
        </>
      )}
    </div>
  );
}
