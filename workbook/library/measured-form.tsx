import { useState } from 'preact/hooks';
import { shownUnit, type TableDescription } from '../../engine/index';
import { useSheet } from '../store/context';
import { MEASURINGS, measuredFrom } from './measured';

interface Props {
  readonly table: TableDescription;
  /** Takes the number as a formula of what was measured, and says where it comes from. */
  onUse(column: string, formula: string, source: string): void;
}

/** A number of one's own row from two measurements. */
export function MeasuredForm({ table, onUse }: Props) {
  const sheet = useSheet();
  const [typed, type] = useState<Readonly<Record<string, string>>>({});
  const measuring = MEASURINGS[table.name];
  if (!measuring) return null;
  const set = sheet.units();
  const measured = measuredFrom(measuring, typed, set);
  const column = table.columns.find(({ name }) => name === measuring.column);
  return (
    <fieldset class="measured">
      <legend>{measuring.title}</legend>
      <p class="aside">{measuring.about}</p>
      {measuring.of.map(({ key, title, unit, blank }) => {
        const shown = shownUnit(unit, set);
        return (
          <label key={key} class="own-row-line">
            <span>
              {title}
              {shown !== '' && `, ${shown}`}
            </span>
            <input
              class="text-entry"
              value={typed[key] ?? ''}
              placeholder={blank}
              onInput={({ currentTarget: { value } }) => type({ ...typed, [key]: value })}
            />
          </label>
        );
      })}
      <p role="status">{measured.ok && `${column?.title ?? measuring.column} ${measured.shown}`}</p>
      {!measured.ok &&
        measured.faults.map((fault) => (
          <p key={fault} class="own-row-fault">
            {fault}
          </p>
        ))}
      <button
        type="button"
        class="word"
        disabled={!measured.ok}
        onClick={() => measured.ok && onUse(measuring.column, measured.formula, measured.source)}
      >
        Use it
      </button>
    </fieldset>
  );
}
