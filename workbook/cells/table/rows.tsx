import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { NameInfo, TableAnswer, TableCell, TableColumn } from '../../../engine/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import { printing } from '../../store/printing';
import { underLeast } from '../../store/reader';
import { spaced } from '../shared/progress-words';
import { useRowHeight } from './row-height';
import { orderOf, pressed } from './shown';
import { ROW, rowsAt, rowsOnPaper, scrollTo } from './window';
import { entryOf, headingOf } from './words';

interface RowsProps {
  readonly cell: TableCell;
  readonly answer: TableAnswer;
  /** Other rows than these are asked for. */
  readonly busy: boolean;
  onRange(from: number, to: number): void;
  /** A row was pressed. */
  onTake(sample: number): void;
}

/** The rows in a window of their own: only those that are seen are there, the others are room. */
export function TableRows({ cell, answer, busy, onRange, onTake }: RowsProps) {
  const sheet = useSheet();
  const room = useRef<HTMLElement>(null);
  const place = useSignal({ scrolled: 0, height: 400 });
  const look = (): void => {
    const { scrollTop = 0, clientHeight = 400 } = room.current ?? {};
    const { scrolled, height } = place.peek();
    if (scrollTop !== scrolled || clientHeight !== height) place.value = { scrolled: scrollTop, height: clientHeight };
  };
  const { scrolled, height } = place.value;
  const onPaper = printing.value;
  const rowHeight = useRowHeight();
  const seen = onPaper
    ? rowsOnPaper(answer.from, answer.reasons.length)
    : rowsAt(scrolled, height, answer.rows, rowHeight);
  useLayoutEffect(look);
  useLayoutEffect(() => {
    if (!onPaper) onRange(seen.from, seen.to);
  }, [seen.from, seen.to, onPaper]);
  const infos = answer.columns.map((column) => sheet.name(column.path));
  const withReasons = cell.groups.length === 0 && answer.causes.length > 0;
  const rows = Array.from({ length: seen.to - seen.from }, (_, k) => seen.from + k);
  const toPresent = (): void => {
    room.current?.scrollTo({ top: scrollTo(Math.max(0, answer.present - 2), height, answer.rows, rowHeight) });
    room.current?.focus();
  };
  return (
    <>
      {answer.present >= 0 && (
        <button type="button" class="word quiet" onClick={toPresent}>
          Go to the {answer.exact || cell.groups.length > 0 ? '' : 'row nearest to the '}present design
        </button>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls has to be reached by keys */}
      <section class="table-room" ref={room} tabIndex={0} aria-label={`Rows of ${cell.title}`} onScroll={look}>
        <table aria-rowcount={answer.rows + 1} aria-busy={busy}>
          <thead>
            <tr aria-rowindex={1}>
              <th scope="col" class="table-number">
                Row
              </th>
              {answer.columns.map((column, c) => (
                <Head
                  key={column.key}
                  cell={cell}
                  column={column}
                  {...headingOf(column, infos[c])}
                  onSort={() => room.current?.scrollTo({ top: 0 })}
                />
              ))}
              {withReasons && (
                <th scope="col" class="table-reason">
                  No answer because
                </th>
              )}
            </tr>
          </thead>
          <Gap height={seen.above} />
          <tbody>
            {rows.map((row) => {
              const k = row - answer.from;
              const known = k >= 0 && k < answer.reasons.length;
              const present = row === answer.present;
              return (
                <tr
                  key={row}
                  aria-rowindex={row + 2}
                  class={present ? 'present' : ''}
                  style={{ height: `${onPaper ? ROW : rowHeight}px` }}
                >
                  <th scope="row" class="table-number">
                    {present && <span class="table-now">{answer.exact ? 'now' : 'near'} </span>}
                    <RowNumber row={row} sample={answer.samples[k]} enters={row === seen.from} onTake={onTake} />
                  </th>
                  {answer.columns.map((column, c) => (
                    <td key={column.key} class={classOf(column, infos[c], answer.values[c]?.[k])}>
                      {known ? entryOf(column, infos[c], answer.values[c]?.[k] ?? Number.NaN, sheet.optionTitle) : '…'}
                    </td>
                  ))}
                  {withReasons && (
                    <td class="table-reason" title={known ? answer.reasons[k] : ''}>
                      {known ? answer.reasons[k] : ''}
                    </td>
                  )}
                </tr>
              );
            })}
          </tbody>
          <Gap height={seen.below} />
        </table>
      </section>
      {onPaper && seen.to - seen.from < answer.rows && (
        <p class="aside">
          Rows {spaced(seen.from + 1)} to {spaced(seen.to)} of {spaced(answer.rows)}: “Save as CSV” has them all.
        </p>
      )}
    </>
  );
}

interface NumberProps extends Pick<RowsProps, 'onTake'> {
  readonly row: number;
  readonly sample: number | undefined;
  /** Tab comes to the rows here. */
  readonly enters: boolean;
}

/** The number of a row takes its design; that of a group only counts. */
function RowNumber({ row, sample, enters, onTake }: NumberProps) {
  if (sample === undefined) return <>{spaced(row + 1)}</>;
  return (
    <button type="button" class="word quiet table-take" {...along(enters)} onClick={() => onTake(sample)}>
      <span class="unseen">Take the design of row </span>
      {spaced(row + 1)}
    </button>
  );
}

/** Room of rows that aren't drawn. */
const Gap = ({ height }: { height: number }) => (
  <tbody class="table-gap" aria-hidden="true">
    <tr style={{ height: `${height}px` }}>
      <td />
    </tr>
  </tbody>
);

function Head(props: { cell: TableCell; column: TableColumn; title: string; below: string; onSort(): void }) {
  const { cell, column, title, below, onSort } = props;
  const sheet = useSheet();
  const order = orderOf(cell, column);
  return (
    <th scope="col" aria-sort={order}>
      <button
        type="button"
        class="table-head"
        onClick={() => {
          sheet.arrange(pressed(cell, column));
          onSort();
        }}
      >
        <span>{title} </span>
        <span class="table-below">
          {below}
          {order !== 'none' && ` ${order === 'ascending' ? '↑' : '↓'}`}
        </span>
      </button>
    </th>
  );
}

/** A number that is under what its result may not come under is red. */
function classOf({ measure }: TableColumn, info: NameInfo | undefined, si = Number.NaN): string {
  if (info?.options) return 'table-word';
  const counts = measure === 'count' || measure === 'unanswered';
  return !counts && underLeast(info, si) ? 'too-low' : '';
}
