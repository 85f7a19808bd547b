import { sameDimension, type Unit, type UnitSet, unitNamed, units } from '../../../engine/index';
import { type PasteColumn, type Target, unitFor } from './paste-columns';

interface Props {
  readonly columns: readonly PasteColumn[];
  readonly lines: readonly { readonly line: number; readonly fields: readonly string[] }[];
  readonly targets: readonly Target[];
  readonly units: UnitSet;
  onMatch(columns: readonly PasteColumn[]): void;
}

/** So many lines show how the rest is read. */
const SHOWN = 4;

/** The first lines of a pasted table under what each column is matched to, to be matched otherwise. */
export function ColumnsTable({ columns, lines, targets, units: set, onMatch }: Props) {
  const change = (k: number, column: Partial<PasteColumn>): void =>
    onMatch(columns.with(k, { ...columns[k]!, ...column }));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways has to be reachable by keys.
    <section class="paste-room" aria-label="Columns of the pasted table" tabIndex={0}>
      <table class="paste-table">
        <thead>
          <tr>
            {columns.map(({ head }, k) => (
              <th key={k} scope="col">
                {head || '(no heading)'}
              </th>
            ))}
          </tr>
          <tr>
            {columns.map((column, k) => (
              <td key={k}>
                <select
                  aria-label={`${column.head || `Column ${k + 1}`} is`}
                  value={column.to}
                  onChange={({ currentTarget: { value } }) => {
                    const target = targets.find(({ key }) => key === value);
                    change(k, { to: value, unit: target ? unitFor(target, set) : '' });
                  }}
                >
                  <option value="">left out</option>
                  {targets.map(({ key, title }) => (
                    <option key={key} value={key}>
                      {title}
                    </option>
                  ))}
                </select>
                <UnitPick column={column} onPick={(unit) => change(k, { unit })} />
              </td>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.slice(0, SHOWN).map(({ line, fields }) => (
            <tr key={line}>
              {columns.map(({ to }, k) => (
                <td key={k} class={to === '' ? 'left-out' : ''}>
                  {fields[k] ?? ''}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** The unit of bare numbers in a column. */
function UnitPick({ column, onPick }: { column: PasteColumn; onPick(unit: string): void }) {
  const dimension = unitNamed(column.unit)?.dimension;
  if (column.unit === '' || !dimension) return null;
  const fitting = units.filter((unit: Unit) => unit.name !== '' && sameDimension(unit.dimension, dimension));
  return (
    <select
      aria-label={`Unit of ${column.head}`}
      value={column.unit}
      onChange={({ currentTarget: { value } }) => onPick(value)}
    >
      {fitting.map(({ name }) => (
        <option key={name} value={name}>
          {name}
        </option>
      ))}
    </select>
  );
}
