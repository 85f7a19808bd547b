import { MEASURES, type SweepCell, type TableAnswer, type TableCell } from '../../../engine/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import { Labelled, Pick } from '../shared/pick';
import { spaced } from '../shared/progress-words';
import { Tick } from '../shared/tick';
import { KeptRows } from './kept';

const ROWS = { all: 'all', answered: 'with an answer', unanswered: 'without an answer' } as const;

interface FormProps {
  readonly cell: TableCell;
  readonly causes: TableAnswer['causes'];
}

/** What the table shows: of which sweep, which columns, which rows, in which groups. */
export function TableForm({ cell, causes }: FormProps) {
  const sheet = useSheet();
  const sweeps = sheet.cells.value.filter((each): each is SweepCell => each.kind === 'trial_series');
  const sweep = sweeps.find((each) => each.name === cell.series);
  const axes = sweep?.axes.map((axis) => axis.of) ?? [];
  const paths = [...axes, ...(sweep?.wanted ?? [])];
  const title = (path: string): string => sheet.name(path)?.title ?? path;
  const change = (to: Partial<TableCell>): void => sheet.changeCell({ ...cell, ...to });
  const shown = cell.columns.length === 0 ? paths : cell.columns;
  const showColumn = (path: string, on: boolean): void => {
    const columns = paths.filter((each) => (each === path ? on : shown.includes(each)));
    // None named means all: the last one stays.
    if (columns.length > 0) change({ columns: columns.length === paths.length ? [] : columns });
  };
  const counted = causes.map(({ reason }) => reason);
  const reasons = cell.reason === '' || counted.includes(cell.reason) ? counted : [cell.reason, ...counted];
  return (
    <details class="table-form" open={!sweep}>
      <summary {...along()}>Set up this table</summary>
      <div class="table-fields">
        <Pick
          id={`${cell.id}-sweep`}
          label="Trial series"
          value={cell.series}
          options={sweeps.map((each) => ({ value: each.name, title: each.title || each.name }))}
          onPick={(series) => change({ series, columns: [], keep: [], groups: [], sort: '', reason: '' })}
        />
        <Labelled id={`${cell.id}-rows`} label="Designs">
          <select
            id={`${cell.id}-rows`}
            value={cell.rows}
            onChange={({ currentTarget }) => change({ rows: currentTarget.value as TableCell['rows'] })}
          >
            {Object.entries(ROWS).map(([rows, words]) => (
              <option key={rows} value={rows}>
                {words}
              </option>
            ))}
          </select>
        </Labelled>
        {reasons.length > 0 && (
          <div class="table-cause">
            <Pick
              id={`${cell.id}-reason`}
              label="No answer because"
              value={cell.reason}
              options={[
                { value: '', title: 'any reason, or none' },
                ...reasons.map((reason) => ({
                  value: reason,
                  title: `${spaced(causes.find((cause) => cause.reason === reason)?.count ?? 0)}: ${reason}`,
                })),
              ]}
              onPick={(reason) => change({ reason })}
            />
          </div>
        )}
      </div>
      <fieldset class="ticks">
        <legend>Columns</legend>
        {paths.map((path) => (
          <Tick key={path} on={shown.includes(path)} onChange={(on) => showColumn(path, on)}>
            {title(path)}
          </Tick>
        ))}
      </fieldset>
      <KeptRows cell={cell} paths={paths} />
      <fieldset class="ticks">
        <legend>One row for all designs that agree in</legend>
        {axes.map((path) => (
          <Tick
            key={path}
            on={cell.groups.includes(path)}
            onChange={(on) =>
              change({ groups: axes.filter((each) => (each === path ? on : cell.groups.includes(each))), sort: '' })
            }
          >
            {title(path)}
          </Tick>
        ))}
      </fieldset>
      {cell.groups.length > 0 && (
        <fieldset class="ticks">
          <legend>Of each result</legend>
          {MEASURES.map((measure) => (
            <Tick
              key={measure}
              on={cell.measures.includes(measure)}
              onChange={(on) =>
                change({ measures: MEASURES.filter((each) => (each === measure ? on : cell.measures.includes(each))) })
              }
            >
              {measure}
            </Tick>
          ))}
        </fieldset>
      )}
    </details>
  );
}
