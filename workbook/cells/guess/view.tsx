import type { GuessCell } from '../../../engine/index';
import { classView } from '../../store/class-view';
import { useSheet } from '../../store/context';
import { SetUp } from '../shared/set-up';
import { Tick } from '../shared/tick';
import { Answered } from './answered';
import { GuessForm } from './form';
import { Guessing } from './guessing';
import { Said } from './said';

/** A question, the guess, and then the answer that the design itself computes. */
export function GuessView({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  const faulty = sheet.faultAt(cell.name) !== undefined;
  return (
    <div class="guess">
      <Said cell={cell} words="question" />
      {!faulty && (cell.shown ? <Answered cell={cell} /> : <Guessing cell={cell} />)}
      {classView.value && cell.instructor.trim() !== '' && (
        <section class="guess-instructor">
          <h3>For the instructor</h3>
          <Said cell={cell} words="instructor" />
        </section>
      )}
      <div class="guess-class">
        <Tick
          on={classView.value}
          onChange={(on) => {
            classView.value = on;
          }}
        >
          Class view: many guess on this machine; with the instructor’s notes
        </Tick>
      </div>
      <SetUp title="Set up this question" open={faulty}>
        <GuessForm cell={cell} />
      </SetUp>
    </div>
  );
}
