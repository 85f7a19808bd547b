import type { FormulaCell } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { NameRow, RowMenu, RowRoom, UnitRow } from '../rows/index';
import { makingCommands } from '../shared/number-menu';

type Line = FormulaCell['lines'][number];

interface FormulaLineProps {
  readonly line: Line;
  /** Place in the calculation, and how long that is. */
  readonly at: number;
  readonly count: number;
  readonly isOpen: boolean;
  onOpen(name: string | undefined): void;
  onChange(line: Line): void;
  onMove(by: 1 | -1): void;
  onCopy(): void;
  onRemove(): void;
}

/** One line of a calculation. */
export function FormulaLine({ line, isOpen, onOpen, onChange, ...row }: FormulaLineProps) {
  const sheet = useSheet();
  return (
    <div class="calculation-line">
      <RowMenu
        class="calculation-name"
        title={line.name}
        {...row}
        onChange={() => onOpen(line.name)}
        making={() => makingCommands(sheet, line.name, line.name)}
      >
        {line.name} =
      </RowMenu>
      <TextEntry
        long
        class="calculation-text"
        path={line.name}
        label={`Formula of ${line.name}`}
        text={line.text}
        shown={line.text}
        fault={sheet.faultAt(line.name)}
        onCommit={(text) => sheet.setText(line.name, text)}
        onUndoBeyond={sheet.undo}
      />
      <output class="calculation-value" data-value={line.name}>
        {sheet.shown(line.name)}
      </output>
      <span class="change">{sheet.change(line.name)}</span>
      {isOpen && (
        <RowRoom title={line.name} onClose={() => onOpen(undefined)}>
          <NameRow path={line.name} title={line.name} onRenamed={onOpen} />
          <UnitRow
            label={`Unit of ${line.name}`}
            unit={line.unit}
            blank="as it comes out"
            onPick={(unit) => onChange({ ...line, unit })}
          />
        </RowRoom>
      )}
    </div>
  );
}
