import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { along } from '../../controls/along';

/** The numbers behind a chart as a table. */
export interface TableData {
  /** Rows of the head; a cell may stand over several columns or rows. */
  readonly head: readonly (readonly HeadCell[])[];
  readonly rows: readonly { readonly head: string; readonly cells: readonly string[] }[];
  /** Rows that there are, where `rows` has only the first. */
  readonly total?: number;
}
interface HeadCell {
  readonly text: string;
  readonly columns?: number;
  readonly rows?: number;
}

/** Rows that a page shows at once. */
export const MOST_ROWS = 200;

/** The numbers behind a chart, folded away; written only while they are shown. */
export function Figures({ title, table }: { title: string; table: () => TableData }): JSX.Element {
  const [open, setOpen] = useState(false);
  return (
    <details class="chart-figures" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary {...along()}>Table of values</summary>
      {open && <Table title={title} {...table()} />}
    </details>
  );
}

function Table({ title, head, rows, total = rows.length }: TableData & { title: string }): JSX.Element {
  const shown = rows.slice(0, MOST_ROWS);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard.
    <section aria-label={`Table of values of ${title}`} tabIndex={0}>
      {total > shown.length && (
        <p>
          The first {shown.length} of {total} rows.
        </p>
      )}
      <table>
        <thead>
          {head.map((row, k) => (
            <tr key={k}>
              {row.map(({ text, columns, rows: deep }, c) => (
                <th key={c} scope={(columns ?? 1) > 1 ? 'colgroup' : 'col'} colSpan={columns} rowSpan={deep}>
                  {text}
                </th>
              ))}
            </tr>
          ))}
        </thead>
        <tbody>
          {shown.map((row, k) => (
            <tr key={k}>
              <th scope="row">{row.head}</th>
              {row.cells.map((cell, c) => (
                <td key={c}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
