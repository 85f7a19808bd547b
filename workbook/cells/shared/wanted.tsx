import type { Document, NameInfo } from '../../../engine/index';
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

/** Names of the design as a list to pick from, by the piece that they belong to and its sheet. */
export function nameOptions(sheet: Sheet, fits: (info: NameInfo) => boolean): PickOption[] {
  const groups = groupTitles(sheet.part('sheets'));
  const unique = new Map([...sheet.names.value.values()].filter(fits).map((info) => [info.path, info]));
  return [...unique.values()].map(({ path, title, cell, unit, suffix }) => ({
    value: path,
    title: unit || suffix ? `${title}, ${suffix || unit}` : title,
    group: groups.get(cell) ?? '',
  }));
}

/** Id of each piece → its title, with that of its sheet where there are several. */
function groupTitles(sheets: Document['sheets']): ReadonlyMap<string, string> {
  const on = (title: string): string => (sheets.length > 1 ? ` (sheet ${title})` : '');
  return new Map(
    sheets.flatMap(({ title, pieces }) => pieces.map((cell) => [cell.id, `${titleOf(cell)}${on(title)}`])),
  );
}
