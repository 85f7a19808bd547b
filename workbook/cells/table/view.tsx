import { useComputed, useSignal, useSignalEffect } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { TableCell } from '../../../engine/index';
import { designAt } from '../../charts/index';
import { TakeRow } from '../../controls/take-design';
import { useSheet } from '../../store/context';
import { saveFile } from '../../store/files';
import { useOnScreen } from '../../store/on-screen';
import { createTableFeed } from '../../store/table-feed';
import type { Place } from '../../store/taker';
import { SweepProgressLine } from '../shared/sweep-progress';
import { TableForm } from './form';
import { TableRows } from './rows';
import { viewOf } from './shown';
import { countWords } from './words';

/** Rows asked for before it's known how many there are. */
const FIRST_ROWS = 60;

/** The designs of a sweep, one a row, or groups of them. The rows come from the engine as they are scrolled to. */
export function TableView({ cell }: { cell: TableCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.sweeps.watch(cell.series), cell.series);
  const feed = useMemo(
    () => createTableFeed(sheet.tables, (message) => sheet.tell({ title: 'The table stopped.', sentences: [message] })),
    [],
  );
  const shownCell = useSignal(cell);
  shownCell.value = cell;
  const taken = useSignal<readonly Place[] | undefined>(undefined);
  const range = useSignal({ from: 0, to: FIRST_ROWS });
  const view = useComputed(() => viewOf(shownCell.value, sheet.value));
  // The same rows may be those of another design, and another one of them the present one: it's asked for each revision.
  const settled = useComputed(() => `${sheet.snapshot.value?.revision} ${sheet.sweeps.running.value === 0}`);
  useSignalEffect(() => {
    void settled.value;
    void sheet.sweeps.progress(view.value.series).value;
    feed.want(view.value, range.value.from, range.value.to);
  });
  const sweep = sheet.cells.value.find((each) => each.kind === 'trial_series' && each.name === cell.series);
  const answer = feed.answer.value;
  const save = async (format: 'csv' | 'arrow'): Promise<void> => {
    const pieces = await sheet.tables.tableFile(view.value, format);
    if (pieces.length > 0) saveFile(pieces, `${cell.name}.${format}`, TYPES[format]);
  };
  return (
    <div class="table" ref={watched}>
      {sweep?.kind === 'trial_series' && (!answer || feed.behind.value) && <SweepProgressLine cell={sweep} />}
      <TableForm cell={cell} causes={answer?.causes ?? []} />
      {answer && (
        <>
          <div class="table-line">
            <p role="status">{countWords(answer, cell.groups.length > 0)}</p>
            <button type="button" class="word" onClick={() => void save('csv')}>
              Save as CSV
            </button>
            <button type="button" class="word" onClick={() => void save('arrow')}>
              Save as Arrow
            </button>
          </div>
          <p class="aside">The number of a row takes its design.</p>
          <TakeRow taken={taken} />
          <TableRows
            cell={cell}
            answer={answer}
            busy={feed.behind.value}
            onTake={(sample) => {
              const progress = sheet.sweeps.progress(cell.series).peek();
              taken.value = progress && designAt(progress, sample);
            }}
            onRange={(from, to) => {
              const { from: lastFrom, to: lastTo } = range.peek();
              if (from !== lastFrom || to !== lastTo) range.value = { from, to };
            }}
          />
        </>
      )}
    </div>
  );
}

const TYPES = { csv: 'text/csv;charset=utf-8;header=present', arrow: 'application/vnd.apache.arrow.file' } as const;
