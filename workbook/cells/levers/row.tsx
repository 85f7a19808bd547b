import { LEVER_WAYS, type LeverRow, type LeversCell, type LeverWay, leverPath } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { OptionTicks } from '../shared/option-ticks';
import { Pick, type PickOption } from '../shared/pick';
import { RowFaults } from '../shared/row-faults';
import { SetUpEntry } from '../shared/set-up-entry';
import { newLever, wayTitles } from './words';

interface RowProps {
  readonly cell: LeversCell;
  readonly index: number;
  readonly options: readonly PickOption[];
  onChange(row: LeverRow): void;
  onRemove(): void;
}

/** One lever: what, in which way, by how much; of a choice, which options. */
export function LeverRowForm({ cell, index, options, onChange, onRemove }: RowProps) {
  const sheet = useSheet();
  const row = cell.rows[index]!;
  const info = sheet.name(row.of);
  const title = info?.title ?? row.of;
  const at = leverPath(cell, index);
  const id = (part: string): string => `${cell.id}-row${index + 1}-${part}`;
  const word = row.way === 'to' ? 'Value' : 'By';
  return (
    <fieldset class="set-up-axis">
      <legend>{title}</legend>
      <div class="set-up-fields">
        <Pick
          id={id('of')}
          label="What is changed"
          value={row.of}
          options={options}
          onPick={(of) => onChange(newLever(of))}
        />
        {!info?.options && (
          <>
            <Pick
              id={id('way')}
              label="Which way"
              value={row.way}
              options={LEVER_WAYS.map((way) => ({ value: way, title: wayTitles[way] }))}
              onPick={(way) => onChange({ ...row, way: way as LeverWay })}
            />
            <SetUpEntry
              word={word}
              label={`${title}, ${row.way === 'to' ? 'value' : 'by how much'}`}
              path={at}
              text={row.text}
              placeholder={row.way === 'to' ? 'type a value' : 'type an amount'}
            />
          </>
        )}
        <button type="button" class="word quiet" onClick={onRemove}>
          Remove<span class="unseen"> {title}</span>
        </button>
      </div>
      {info?.options && (
        <OptionTicks
          of={row.of}
          all={info.options}
          taken={row.options}
          onTake={(options) => {
            const { options: _, ...rest } = row;
            onChange(options ? { ...rest, options } : rest);
          }}
        />
      )}
      <RowFaults paths={[at]} />
    </fieldset>
  );
}
