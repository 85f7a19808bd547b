import { useSignal } from '@preact/signals';
import {
  type ColumnDescription,
  type OwnRow,
  rename,
  type TableDescription,
  type Use,
  usesOf,
} from '../../engine/index';
import { goTo } from '../controls/go-to';
import { TextEntry } from '../controls/text-entry';
import { useSheet } from '../store/context';
import { changeRow, NO_SOURCE, removeRow } from './own-edits';

/** One own row: each of its texts can be changed, and it can go when nothing needs it. */
export function OwnRowEditor({ table, row }: { table: TableDescription; row: OwnRow }) {
  const sheet = useSheet();
  const says = `own ${table.one} ${row.title}`;
  const setTitle = (title: string): void => {
    if (title !== '') sheet.edit((document) => changeRow(document, row.name, { title }), says);
  };
  const setSource = (source: string): void => {
    if (source === '') sheet.tell({ title: `${row.title} keeps its source.`, sentences: [NO_SOURCE] });
    else sheet.edit((document) => changeRow(document, row.name, { source }), says);
  };
  const setName = (name: string): void =>
    sheet.edit((document) => {
      const renamed = rename(document, row.name, name);
      if (renamed.ok) return renamed.changes;
      sheet.tell({ title: `${row.title} keeps its name.`, sentences: [renamed.message] });
      return [];
    }, says);
  const word = (label: string, text: string, path: string, onCommit: (text: string) => void) => (
    <div class="own-row-line">
      <span>{label}</span>
      <TextEntry
        path={`${row.name}#${path}`}
        label={`${label} of ${row.title}`}
        text={text}
        shown={text}
        onCommit={onCommit}
        onUndoBeyond={sheet.undo}
      />
    </div>
  );
  return (
    <section class="own-row" aria-label={`Own ${table.one} ${row.title}`}>
      {word('Title', row.title, 'title', setTitle)}
      {word('Name', row.name, 'name', setName)}
      {table.columns.map((column) => (
        <Value key={column.name} row={row} column={column} />
      ))}
      {word('Source', row.source, 'source', setSource)}
      <Removal row={row} says={says} />
    </section>
  );
}

function Value({ row, column }: { row: OwnRow; column: ColumnDescription }) {
  const sheet = useSheet();
  const path = `${row.name}.${column.name}`;
  const text = row.values[column.name] ?? '';
  return (
    <div class="own-row-line">
      <span>{column.title}</span>
      <TextEntry
        path={path}
        label={`${column.title} of ${row.title}`}
        text={text}
        shown={text === '' ? '' : sheet.entry(path)}
        placeholder={column.mayBeBlank ? 'not known' : 'needed'}
        fault={sheet.faultAt(path)}
        onCommit={(typed) => sheet.setText(path, typed)}
        onUndoBeyond={sheet.undo}
      />
    </div>
  );
}

/** Takes the row away; while something names it, says where instead. */
function Removal({ row, says }: { row: OwnRow; says: string }) {
  const sheet = useSheet();
  const uses = useSignal<readonly Use[]>([]);
  return (
    <>
      <button
        type="button"
        class="word quiet"
        onClick={() => {
          uses.value = usesOf(sheet.document.peek(), row.name);
          if (uses.value.length === 0) sheet.edit((document) => removeRow(document, row.name), says);
        }}
      >
        Remove<span class="unseen"> {row.title}</span>
      </button>
      {uses.value.length > 0 && (
        <div role="alert">
          <p class="own-row-fault">
            {row.title} is used in {uses.value.length === 1 ? 'one place' : `${uses.value.length} places`}. Put
            something else there first:
          </p>
          <ul>
            {uses.value.map((use) => (
              <li key={`${use.path} ${use.baseline} ${use.variant}`}>
                {use.cell === '' ? (
                  use.path
                ) : (
                  <button type="button" class="word quiet" onClick={() => goTo(sheet, use)}>
                    {use.path}
                  </button>
                )}
                {use.baseline && ', in the baseline'}
                {use.variant !== undefined && `, in the variant “${use.variant}”`}
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}
