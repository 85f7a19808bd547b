import { useSignal } from '@preact/signals';
import type { ChoiceCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { moved, NameRow, RowMenu, RowRoom, UnitRow, WordsRow } from '../rows/index';
import { withChangedColumn, withColumn, withoutColumn } from './edits';

/** The numbers that every option of a choice gives. */
export function ChoiceColumns({ cell }: { cell: ChoiceCell }) {
  const sheet = useSheet();
  const opened = useSignal<string | undefined>(undefined);
  const open = (name: string | undefined): void => {
    opened.value = name;
  };
  return (
    <section aria-label={`Numbers of ${cell.title}`}>
      <h3>Numbers of each option</h3>
      {cell.columns.length === 0 && (
        <p class="aside">None: the options are bare names, for a place in the model that takes one of a list.</p>
      )}
      {cell.columns.map((column, at) => (
        <div key={column.name} class="option-line">
          <RowMenu
            title={column.title}
            at={at}
            count={cell.columns.length}
            onChange={() => open(column.name)}
            onMove={(by) => sheet.changeCell({ ...cell, columns: moved(cell.columns, at, by) })}
            onRemove={() => sheet.changeCell(withoutColumn(cell, column.name))}
          >
            {column.title}
          </RowMenu>
          {opened.value === column.name && (
            <RowRoom title={column.title} onClose={() => open(undefined)}>
              <WordsRow
                word="Title"
                label={`Title of ${column.title}`}
                path={`${cell.name}.${column.name}#title`}
                text={column.title}
                onCommit={(title) => sheet.changeCell(withChangedColumn(cell, at, { title }))}
              />
              <NameRow path={`${cell.name}.${column.name}`} title={column.title} onRenamed={open} />
              <UnitRow
                label={`Unit of ${column.title}`}
                unit={column.unit}
                blank="a plain number"
                onPick={(unit) => sheet.changeCell(withChangedColumn(cell, at, { unit }))}
              />
            </RowRoom>
          )}
        </div>
      ))}
      <button type="button" class="word quiet" onClick={() => sheet.changeCell(withColumn(cell))}>
        Add a number<span class="unseen"> to every option of {cell.title}</span>
      </button>
    </section>
  );
}
