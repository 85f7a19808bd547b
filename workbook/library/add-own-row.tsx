import { useSignal } from '@preact/signals';
import { useEffect, useId, useRef } from 'preact/hooks';
import type { ColumnDescription, OwnRow, TableDescription } from '../../engine/index';
import { useSheet } from '../store/context';
import { MeasuredForm } from './measured-form';
import { addRow, draftFaults, emptyDraft, rowOf } from './own-edits';

/** The form of a row that is not there yet. It becomes one when all is said that its table needs. */
export function AddOwnRow({ table, onDone }: { table: TableDescription; onDone(row?: OwnRow): void }) {
  const sheet = useSheet();
  const draft = useSignal(emptyDraft);
  const faults = useSignal<readonly string[]>([]);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => form.current?.querySelector('input')?.focus(), []);
  const add = (): void => {
    faults.value = draftFaults(draft.value, table);
    if (faults.value.length > 0) return;
    const row = rowOf(draft.value, table.name, sheet.document.peek(), sheet.offered.peek()?.tables ?? []);
    sheet.edit((document) => addRow(document, row), `own ${table.one} ${row.title}`);
    onDone(row);
  };
  return (
    <form
      ref={form}
      class="own-row"
      aria-label={`New ${table.one}`}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') onDone();
      }}
    >
      <Line label="Title">
        {(id) => (
          <input
            id={id}
            class="text-entry"
            value={draft.value.title}
            onInput={(event) => {
              draft.value = { ...draft.value, title: event.currentTarget.value };
            }}
          />
        )}
      </Line>
      {table.columns.map((column) => (
        <Line key={column.name} label={labelOf(column)}>
          {(id) => (
            <ValueInput
              id={id}
              column={column}
              text={draft.value.values[column.name] ?? ''}
              onText={(text) => {
                draft.value = { ...draft.value, values: { ...draft.value.values, [column.name]: text } };
              }}
            />
          )}
        </Line>
      ))}
      <MeasuredForm
        table={table}
        onUse={(column, formula, source) => {
          const { values, source: said } = draft.value;
          const from = said.trim() === '' ? source : said;
          draft.value = { ...draft.value, source: from, values: { ...values, [column]: formula } };
        }}
      />
      <Line label="Source">
        {(id) => (
          <input
            id={id}
            class="text-entry"
            placeholder="weighed, packet, page of a book"
            value={draft.value.source}
            onInput={(event) => {
              draft.value = { ...draft.value, source: event.currentTarget.value };
            }}
          />
        )}
      </Line>
      <div role="alert">
        {faults.value.map((fault) => (
          <p key={fault} class="own-row-fault">
            {fault}
          </p>
        ))}
      </div>
      <button type="submit" class="word">
        Add this {table.one}
      </button>
      <button type="button" class="word" onClick={() => onDone()}>
        Close
      </button>
    </form>
  );
}

/** "Density, kg/m³" */
const labelOf = ({ title, unit, mayBeBlank }: ColumnDescription): string =>
  `${title}${unit === '' ? '' : `, ${unit}`}${mayBeBlank ? ', if known' : ''}`;

function Line({ label, children }: { label: string; children: (id: string) => preact.JSX.Element }) {
  const id = useId();
  return (
    <div class="own-row-line">
      <label for={id}>{label}</label>
      {children(id)}
    </div>
  );
}

function ValueInput(props: { id: string; column: ColumnDescription; text: string; onText(text: string): void }) {
  const { id, column, text, onText } = props;
  if (!column.options) {
    return <input id={id} class="text-entry" value={text} onInput={(event) => onText(event.currentTarget.value)} />;
  }
  return (
    <select id={id} value={text} onChange={(event) => onText(event.currentTarget.value)}>
      <option value="">pick one</option>
      {column.options.map((option) => (
        <option key={option} value={option}>
          {option.replaceAll('_', ' ')}
        </option>
      ))}
    </select>
  );
}
