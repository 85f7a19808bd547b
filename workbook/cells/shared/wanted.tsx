import type { NameInfo } from '../../../engine/index';
import type { Sheet } from '../../store/sheet';
import { titleOf } from './offer';
import { AddFrom, type PickOption } from './pick';

interface WantedProps {
  /** Id of the cell. */
  readonly id: string;
  readonly wanted: readonly string[];
  readonly sheet: Sheet;
  onChange(wanted: readonly string[]): void;
}

/** Results that are computed for every design. */
export function Wanted({ id, wanted, sheet, onChange }: WantedProps) {
  const options = nameOptions(sheet, isResult).filter(({ value }) => !wanted.includes(value));
  return (
    <fieldset class="set-up-list">
      <legend>Results asked for</legend>
      <ul>
        {wanted.map((path) => {
          const title = sheet.name(path)?.title ?? `${path} (not there)`;
          return (
            <li key={path}>
              {title}{' '}
              <button type="button" class="word quiet" onClick={() => onChange(wanted.filter((each) => each !== path))}>
                Remove<span class="unseen"> {title}</span>
              </button>
            </li>
          );
        })}
      </ul>
      <div class="set-up-fields">
        <AddFrom
          id={`${id}-add-result`}
          label={wanted.length === 0 ? 'Result' : 'Add a result'}
          what="result"
          options={options}
          onAdd={(path) => onChange([...wanted, path])}
        />
      </div>
    </fieldset>
  );
}

const RESULTS: ReadonlySet<NameInfo['kind']> = new Set(['result', 'formula', 'fold', 'part']);

/** The details of every part, and what notes say, would hide the rest. */
export const isResult = (info: NameInfo): boolean => RESULTS.has(info.kind) && !info.options && !isAside(info);
const isAside = ({ kind, detail, settable }: NameInfo): boolean =>
  kind === 'part' ? detail === true || settable : kind === 'formula' && detail === true;

/** Names of the sheet as a list to pick from, by the cell that they belong to. */
export function nameOptions(sheet: Sheet, fits: (info: NameInfo) => boolean): PickOption[] {
  const cells = new Map(sheet.cells.value.map((cell) => [cell.id, titleOf(cell)]));
  const unique = new Map([...sheet.names.value.values()].filter(fits).map((info) => [info.path, info]));
  return [...unique.values()].map(({ path, title, cell, unit, suffix }) => ({
    value: path,
    title: unit || suffix ? `${title}, ${suffix || unit}` : title,
    group: cells.get(cell) ?? '',
  }));
}
