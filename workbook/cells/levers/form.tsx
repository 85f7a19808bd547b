import type { LeversCell, NameInfo } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { AddFrom, type PickOption } from '../shared/pick';
import { nameOptions, Wanted } from '../shared/wanted';
import { LeverRowForm } from './row';
import { newLever } from './words';

/** What is changed, in which way and by how much; which results are asked for. */
export function LeversForm({ cell }: { cell: LeversCell }) {
  const sheet = useSheet();
  const change = (to: Partial<LeversCell>): void => sheet.changeCell({ ...cell, ...to });
  const options: PickOption[] = nameOptions(sheet, isLever);
  return (
    <>
      {cell.rows.map((_, k) => (
        <LeverRowForm
          // A row is known by its place: its text has a path by it.
          key={k}
          cell={cell}
          index={k}
          options={options}
          onChange={(to) => change({ rows: cell.rows.with(k, to) })}
          onRemove={() => change({ rows: cell.rows.toSpliced(k, 1) })}
        />
      ))}
      <div class="set-up-fields">
        <AddFrom
          id={`${cell.id}-add-row`}
          label={cell.rows.length === 0 ? 'What is changed' : 'And what else is changed'}
          options={options}
          onAdd={(of) => change({ rows: [...cell.rows, newLever(of)] })}
        />
      </div>
      <p class="aside">One thing is changed at a time; everything else stays as the sheet has it.</p>
      <Wanted
        id={cell.id}
        wanted={cell.wanted}
        sheet={sheet}
        onChange={(wanted) =>
          change({
            wanted,
            rank: wanted.includes(cell.rank) ? cell.rank : '',
            per: wanted.includes(cell.per) && cell.per !== (cell.rank || wanted[0]) ? cell.per : '',
          })
        }
      />
    </>
  );
}

const LEVERS: ReadonlySet<NameInfo['kind']> = new Set(['variable', 'choice', 'field']);
const isLever = (info: NameInfo): boolean => info.settable && LEVERS.has(info.kind);
