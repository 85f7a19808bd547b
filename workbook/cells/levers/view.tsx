import type { ChartCell, LeversCell, SweepProgress } from '../../../engine/index';
import { LeverPicture } from '../../charts/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { tooOldForPaper } from '../../store/printing';
import { Remade } from '../shared/remade';
import { SetUp } from '../shared/set-up';
import { SweepProgressLine } from '../shared/sweep-progress';
import { LeversForm } from './form';
import { RankedBy } from './ranked-by';
import { LeversRanking } from './ranking';

/** What each change does to the results: ranked in a table, and as bars both ways. */
export function LeversView({ cell }: { cell: LeversCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.sweeps.watch(cell.name), cell.name);
  const told = sheet.sweeps.progress(cell.name).value;
  const progress = tooOldForPaper(() => sheet.sweeps.madeFor(cell.name).value, sheet.snapshot.value) ? undefined : told;
  const faulty = sheet.faultAt(cell.name) !== undefined;
  const shown = progress?.levers && !faulty && fits(progress, cell) ? progress : undefined;
  return (
    <div class="levers" ref={watched}>
      {!faulty && <SweepProgressLine cell={cell} />}
      {shown && (
        <>
          <RankedBy cell={cell} />
          <LeversRanking cell={cell} progress={shown} />
          <Picture cell={cell} progress={shown} />
          <Remade of={cell.rows.map(({ of }) => of)} />
        </>
      )}
      <SetUp title="Set up these changes" open={faulty}>
        <LeversForm cell={cell} />
      </SetUp>
    </div>
  );
}

/** What was computed for other results is about to be computed anew. */
const fits = ({ wanted, columns }: SweepProgress, cell: LeversCell): boolean =>
  columns.length === cell.wanted.length && wanted.every((path, k) => path === cell.wanted[k]);

function Picture({ cell, progress }: { cell: LeversCell; progress: SweepProgress }) {
  const sheet = useSheet();
  const values = sheet.snapshot.value?.values;
  if (!values) return null;
  const { id, name } = cell;
  const chart: ChartCell = {
    ...{ kind: 'chart', chart: 'bars', id: `${id}-chart`, name, series: name, across: '', up: [], lines: '' },
    title: `Tornado chart of ${cell.title}`,
  };
  return (
    <LeverPicture
      cell={chart}
      names={sheet.names.value}
      values={values}
      moving={sheet.moving.value}
      checks={[]}
      optionTitle={sheet.optionTitle}
      progress={progress}
    />
  );
}
