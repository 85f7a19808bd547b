import { effect } from '@preact/signals';
import { useState } from 'preact/hooks';
import { type FitAnswer, type FitCell, type LogCell, sheetOfPiece } from '../../../engine/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { fitFor } from '../fit/offer';
import { takenChanges } from '../fit/taken';
import { foundWords, isTaken } from '../fit/words';

/** Fits the design to the flights and takes what was found, in one press and one step of undo; a log without a fit gets one. */
export function FitNow({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const [said, say] = useState('');
  const [works, work] = useState(false);
  const run = async (): Promise<void> => {
    work(true);
    say('Working.');
    sheet.settle();
    const fit = fitOf(sheet, cell);
    say(fit === undefined ? 'Nothing may be changed here.' : await take(sheet, cell, fit));
    work(false);
  };
  return (
    <div class="fit-now">
      <button type="button" class="word" disabled={works} onClick={() => void run()}>
        Fit the design to these flights
      </button>
      <p role="status">{said}</p>
      {cell.taken.length > 0 && (
        <>
          <h3>Taken into the design from this log</h3>
          <ul class="taken">
            {cell.taken.map(({ date, of, before, after, note }, k) => (
              <li key={k}>
                {date}: {sheet.name(of)?.title ?? of} {before} → {after}. {note}
              </li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}

/** The fit that reads this log, or a new one behind it. */
function fitOf(sheet: Sheet, cell: LogCell): FitCell | undefined {
  const known = sheet.cells.value.find((each): each is FitCell => each.kind === 'fit' && each.log === cell.name);
  if (known) return known;
  let made: FitCell | undefined;
  sheet.edit((document) => {
    const home = sheetOfPiece(document, cell.id)!;
    made = fitFor(document, cell.name);
    return [
      { change: 'insert', sheet: home.id, at: home.pieces.findIndex(({ id }) => id === cell.id) + 1, cell: made },
    ];
  }, 'a fit to flown laps');
  return sheet.cells.value.some(({ id }) => id === made?.id) ? made : undefined;
}

async function take(sheet: Sheet, cell: LogCell, fit: FitCell): Promise<string> {
  const answer = await settledFit(sheet, fit.name);
  if (answer.state === 'fault') return answer.message ?? 'There is no fit.';
  if (!answer.takeable) return ['Nothing was taken.', ...answer.sentences].join(' ');
  if (answer.factors.every(isTaken)) return 'What these flights say is in the design already.';
  const log = sheet.cells.value.find((each): each is LogCell => each.id === cell.id);
  if (!log) return '';
  sheet.edit(() => takenChanges(answer, log, sheet), `the values of ${fit.title}`);
  const found = answer.factors.map((factor) => {
    const { title = factor.path, ...info } = sheet.name(factor.path) ?? { unit: '', suffix: '' };
    return `${title} ${foundWords(factor, info)}`;
  });
  return `Taken into the design: ${found.join('; ')}. Undo takes it back.`;
}

/** The answer of a fit for the design as it stands. */
function settledFit(sheet: Sheet, name: string): Promise<FitAnswer> {
  return new Promise((resolve) => {
    const leave = sheet.fits.watch(name);
    let stop: (() => void) | undefined;
    let done = false;
    stop = effect(() => {
      const answer = sheet.fits.of(name).value;
      const ready =
        !sheet.fits.working(name).value && answer !== undefined && sheet.snapshot.value?.revision === answer.revision;
      if (!ready || done || sheet.cells.value.every((each) => each.name !== name)) return;
      done = true;
      resolve(answer);
      queueMicrotask(() => {
        stop?.();
        leave();
      });
    });
  });
}
