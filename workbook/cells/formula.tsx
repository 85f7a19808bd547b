import type { FormulaCell } from '../../engine/index';
import { TextEntry } from '../controls/text-entry';
import { useSheet } from '../store/context';

/** Ruled calculation lines: name left, what is written in the middle, value right. */
export function FormulaView({ cell }: { cell: FormulaCell }) {
  const sheet = useSheet();
  return (
    <div class="calculation">
      {cell.lines.map((line) => (
        <div class="calculation-line" key={line.name}>
          <span class="calculation-name">{line.name} =</span>
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
          <output class="calculation-value" aria-live="off" data-value={line.name}>
            {sheet.shown(line.name)}
          </output>
          <span class="change">{sheet.change(line.name)}</span>
        </div>
      ))}
    </div>
  );
}
