import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type Change, cellsOf, type Document, takenNames, type VariablesCell } from '../../../engine/index';
import { along } from '../../controls/along';
import { kept } from '../../controls/kept';
import { useSheet } from '../../store/context';
import { moved, useSteadyKeys } from '../rows/index';
import { copyOfVariable, withoutVariable, withVariable } from './edits';
import { newVariable } from './offer';
import { type RowActions, VariableRow } from './row';

/** A schedule of dimension lines. */
export function VariablesView({ cell }: { cell: VariablesCell }) {
  const sheet = useSheet();
  const opened = useSignal<string | undefined>(undefined);
  const act = useMemo((): RowActions & { add(): void } => {
    const edit = (make: (now: VariablesCell, document: Document) => VariablesCell, says: string): void =>
      sheet.edit((document): Change[] => {
        const now = cellsOf(document).find((each) => each.id === cell.id);
        return now?.kind === 'variables' ? [{ change: 'cell', cell: make(now, document) }] : [];
      }, says);
    const open = (name: string | undefined): void => {
      opened.value = name;
    };
    return {
      open,
      move: (name, by) =>
        edit((now) => {
          const at = now.rows.findIndex((row) => row.name === name);
          return { ...now, rows: moved(now.rows, at, by) };
        }, `moving ${name}`),
      copy: (name) =>
        edit((now, document) => {
          const row = now.rows.find((each) => each.name === name);
          if (!row) return now;
          const copy = copyOfVariable(row, takenNames(document));
          open(copy.name);
          return withVariable(now, copy, name);
        }, `copying ${name}`),
      remove: (name) => edit((now) => withoutVariable(now, name), `removing ${name}`),
      add: () =>
        edit((now, document) => {
          const row = newVariable(takenNames(document));
          open(row.name);
          return withVariable(now, row);
        }, 'a new variable'),
    };
  }, [sheet, cell.id, opened]);
  const names = useMemo(() => cell.rows.map(({ name }) => name), [cell.rows]);
  const keyOf = useSteadyKeys(names);
  return (
    <div class="schedule">
      {cell.rows.length === 0 && <p class="aside">No variable yet.</p>}
      {cell.rows.map((row, at) => (
        <KeptRow
          key={keyOf(row.name)}
          row={row}
          at={at}
          count={cell.rows.length}
          isOpen={opened.value === row.name}
          act={act}
        />
      ))}
      <button type="button" {...along()} class="word quiet" onClick={act.add}>
        Add a variable<span class="unseen"> to {cell.title}</span>
      </button>
    </div>
  );
}

const KeptRow = kept(VariableRow);
