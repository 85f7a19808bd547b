import { type CheckCell, inSentence, noteFormulas, reasonPath } from '../../../engine/index';
import { Mark } from '../../controls/mark';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { RowFaults } from '../shared/row-faults';
import { CheckForm } from './form';
import { briefly, holdsOf, reasonSaid, verdict } from './verdict';

const reasonPaths = (cell: CheckCell): readonly string[] =>
  (['below', 'above'] as const).flatMap((end) => noteFormulas(cell[end]).map((_, k) => reasonPath(cell.name, end, k)));

/** "Stop if …" with the reason, and how it stands now, in words beside the mark. */
export function CheckView({ cell }: { cell: CheckCell }) {
  const sheet = useSheet();
  const info = sheet.name(cell.of);
  const said = info ? inSentence(info.title) : cell.of;
  const now = verdict(cell, sheet);
  const limit = (end: 'low' | 'high', reason: 'below' | 'above') => {
    if (cell[end] === '') return null;
    const path = `${cell.name}.${end}`;
    return (
      <div class="check-limit">
        <span>
          Stop if {said} is {end === 'low' ? 'under' : 'over'}
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
        <span class="aside">{briefly(reasonSaid(cell, reason, sheet))}</span>
      </div>
    );
  };
  return (
    <div class="check">
      {limit('low', 'below')}
      {limit('high', 'above')}
      <p class={`check-now ${now.kind}`}>
        <Mark holds={holdsOf(now)} />
        <span>{now.words}</span>
      </p>
      <RowFaults paths={[`${cell.name}.low`, `${cell.name}.high`, ...reasonPaths(cell)]} />
      <CheckForm cell={cell} />
    </div>
  );
}
