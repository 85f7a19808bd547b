import type { FitAnswer, FitCell, LogCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { SetUp } from '../shared/set-up';
import { FitFactors } from './factors';
import { FitForm } from './form';
import { FitResiduals } from './residuals';
import { statusWords } from './words';

/** Factors for which the model comes nearest to a log, how sure they are, and how far each reading still lies off. */
export function FitView({ cell }: { cell: FitCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.fits.watch(cell.name), cell.name);
  const answer = sheet.fits.of(cell.name).value;
  const working = sheet.fits.working(cell.name).value;
  // What the sheet says of the cell stands above it already.
  const fault = sheet.faultAt(cell.name) === undefined ? answer?.message : undefined;
  return (
    <div class="fit" ref={watched} aria-busy={working}>
      <p role="status">{working ? 'Working.' : statusWords(answer)}</p>
      {answer?.state === 'fault' && fault !== undefined && <p class="fault-words">{fault}</p>}
      {answer?.state === 'settled' && <Found cell={cell} answer={answer} />}
      <SetUp title="Set up this fit" open={sheet.faultAt(cell.name) !== undefined}>
        <FitForm cell={cell} />
      </SetUp>
    </div>
  );
}

function Found({ cell, answer }: { cell: FitCell; answer: FitAnswer }) {
  const sheet = useSheet();
  const log = sheet.cells.value.find((each): each is LogCell => each.kind === 'log' && each.name === cell.log);
  return (
    <>
      {answer.sentences.map((sentence) => (
        <p key={sentence} class="fit-sentence">
          {sentence}
        </p>
      ))}
      <FitFactors cell={cell} answer={answer} />
      {log && <FitResiduals answer={answer} log={log} title={cell.title} />}
    </>
  );
}
