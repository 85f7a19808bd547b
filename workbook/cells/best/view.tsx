import type { BestAnswer, BestCell, ChartCell, SweepProgress } from '../../../engine/index';
import { BestPicture } from '../../charts/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { Remade } from '../shared/remade';
import { SetUp } from '../shared/set-up';
import { BestForm } from './form';
import { BestProgressLine } from './progress';
import { BestTable } from './table';
import { foundWords } from './words';

/** The designs that no other beats in everything that is wanted: as a chart and as a table. */
export function BestView({ cell }: { cell: BestCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.bests.watch(cell.name), cell.name);
  const answer = sheet.bests.of(cell.name).value;
  const working = sheet.bests.working(cell.name).value;
  const faulty = sheet.faultAt(cell.name) !== undefined;
  const shown = !faulty && answer && answer.state !== 'fault' && fits(answer, cell) ? answer : undefined;
  return (
    <div class="best" ref={watched} aria-busy={working}>
      {!faulty && <BestProgressLine cell={cell} />}
      {!faulty && !working && answer?.state === 'fault' && <p class="fault-flag fault">{answer.message}</p>}
      {shown && !working && <p role="status">{foundWords(shown, sheet.name).join(' ')}</p>}
      {shown && shown.front > 0 && (
        <>
          <Picture cell={cell} answer={shown} />
          <BestTable cell={cell} answer={shown} />
        </>
      )}
      <Remade of={cell.axes.map(({ of }) => of)} />
      <SetUp title="Set up what is wanted" open={faulty || answer?.state === 'fault'}>
        <BestForm cell={cell} />
      </SetUp>
    </div>
  );
}

/** What was found for other wishes is about to be looked for anew. */
const fits = ({ goals, wanted, axes }: BestAnswer, cell: BestCell): boolean =>
  JSON.stringify([goals, wanted, axes]) === JSON.stringify([cell.goals, cell.wanted, cell.axes.map(({ of }) => of)]);

function Picture({ cell, answer }: { cell: BestCell; answer: BestAnswer }) {
  const sheet = useSheet();
  const snapshot = sheet.snapshot.value;
  if (!snapshot) return null;
  const { id, name } = cell;
  const [across = '', ...up] = answer.goals.map(({ of }) => of);
  const chart: ChartCell = {
    ...{ kind: 'chart', chart: 'scatter', id: `${id}-chart`, name, series: name, across, up, lines: '' },
    title: `Chart of ${cell.title}`,
  };
  const designs = [...answer.beaten, ...answer.shown];
  const progress: SweepProgress = {
    ...{ revision: answer.revision, sweep: name, axes: [], wanted: [across, ...up], state: 'done', sentences: [] },
    columns: answer.goals.map((_, g) => Float64Array.from(designs, ({ goals }) => goals[g]!)),
    why: new Uint16Array(designs.length),
    ...{ done: designs.length, total: designs.length },
  };
  return (
    <BestPicture
      cell={chart}
      names={sheet.names.value}
      values={snapshot.values}
      baseline={snapshot.baseline}
      others={sheet.variantGhosts.value}
      moving={sheet.moving.value}
      checks={sheet.checks.value}
      optionTitle={sheet.optionTitle}
      taker={sheet.taker}
      progress={progress}
      beaten={answer.beaten.length}
      designOf={(sample) => placesOf(answer, sample)}
    />
  );
}

const placesOf = ({ axes, beaten, shown }: BestAnswer, sample: number) => {
  const { at } = sample < beaten.length ? beaten[sample]! : shown[sample - beaten.length]!;
  return axes.map((path, a) => ({ path, si: at[a]! }));
};
