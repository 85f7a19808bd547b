import type { LeversCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { Pick } from '../shared/pick';

/** By which result the changes are ranked, and for each unit of which other one. */
export function RankedBy({ cell }: { cell: LeversCell }) {
  const sheet = useSheet();
  const rank = cell.rank === '' ? (cell.wanted[0] ?? '') : cell.rank;
  if (cell.wanted.length < 2) return null;
  const option = (path: string) => ({ value: path, title: sheet.name(path)?.title ?? path });
  return (
    <div class="set-up-fields levers-rank">
      <Pick
        id={`${cell.id}-rank`}
        label="Ranked by the change of"
        value={rank}
        options={cell.wanted.map(option)}
        onPick={(path) => sheet.changeCell({ ...cell, rank: path, per: cell.per === path ? '' : cell.per })}
      />
      <Pick
        id={`${cell.id}-per`}
        label="for each change of"
        value={cell.per}
        options={[
          { value: '', title: 'nothing: by itself' },
          ...cell.wanted.filter((path) => path !== rank).map(option),
        ]}
        onPick={(per) => sheet.changeCell({ ...cell, per })}
      />
    </div>
  );
}
