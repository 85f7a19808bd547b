import type { CheckCell } from '../../../engine/index';
import { Mark } from '../../controls/mark';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { RowFaults } from '../shared/row-faults';
import { CheckForm } from './form';
import { briefly, verdict } from './verdict';

/** "Stop if …" with the reason, and how it stands now, in words beside the mark. */
export function CheckView({ cell }: { cell: CheckCell }) {
  const sheet = useSheet();
  const title = sheet.name(cell.of)?.title ?? cell.of;
  const now = verdict(cell, sheet);
  const limit = (end: 'low' | 'high', reason: string) => {
    if (cell[end] === '') return null;
    const path = `${cell.name}.${end}`;
    return (
      <div class="check-limit">
        <span>
          stop if {title} is {end === 'low' ? 'under' : 'over'}
        </span>
        <TextEntry
          class="check-entry"
          path={path}
          label={`${cell.title}, ${end === 'low' ? 'least' : 'most'} allowed`}
          text={cell[end]}
          shown={sheet.entry(path)}
          fault={sheet.faultAt(path)}
          faultElsewhere
          onCommit={(text) => sheet.setText(path, text)}
          onUndoBeyond={sheet.undo}
        />
        <span class="aside">{briefly(reason)}</span>
      </div>
    );
  };
  return (
    <div class="check">
      {limit('low', cell.below)}
      {limit('high', cell.above)}
      <p class={`check-now ${now.kind}`}>
        <Mark holds={now.kind === 'waits' ? undefined : now.kind === 'holds'} />
        <span>{now.words}</span>
      </p>
      <RowFaults paths={[`${cell.name}.low`, `${cell.name}.high`]} />
      <CheckForm cell={cell} />
    </div>
  );
}
