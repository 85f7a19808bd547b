import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type FormulaCell, freeName, takenNames } from '../../../engine/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import { moved, useSteadyKeys } from '../rows/index';
import { FormulaLine } from './line';
import { newLine } from './offer';

/** Ruled calculation lines: name left, what is written in the middle, value right. */
export function FormulaView({ cell }: { cell: FormulaCell }) {
  const sheet = useSheet();
  const opened = useSignal<string | undefined>(undefined);
  const put = (lines: FormulaCell['lines']): void => sheet.changeCell({ ...cell, lines });
  const open = (name: string | undefined): void => {
    opened.value = name;
  };
  const taken = (): ReadonlySet<string> => takenNames(sheet.document.peek());
  const names = useMemo(() => cell.lines.map(({ name }) => name), [cell.lines]);
  const keyOf = useSteadyKeys(names);
  return (
    <div class="calculation">
      {cell.lines.length === 0 && <p class="aside">No line yet.</p>}
      {cell.lines.map((line, at) => (
        <FormulaLine
          key={keyOf(line.name)}
          line={line}
          at={at}
          count={cell.lines.length}
          isOpen={opened.value === line.name}
          onOpen={open}
          onChange={(next) => put(cell.lines.with(at, next))}
          onMove={(by) => put(moved(cell.lines, at, by))}
          onCopy={() => put(cell.lines.toSpliced(at + 1, 0, { ...line, name: freeName(line.name, taken()) }))}
          onRemove={() => put(cell.lines.toSpliced(at, 1))}
        />
      ))}
      <button
        type="button"
        {...along()}
        class="word quiet"
        onClick={() => {
          const line = newLine(taken());
          put([...cell.lines, line]);
          open(line.name);
        }}
      >
        Add a line<span class="unseen"> to {cell.title}</span>
      </button>
    </div>
  );
}
