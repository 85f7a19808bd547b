import { type Part, sameDimension, type Unit, unitNamed, units } from '../../../../engine/index';
import { useSheet } from '../../../store/context';
import { shapeWords } from '../shapes';
import { type PasteColumn, TARGETS, targetOf, unitFor } from './columns';

interface Props {
  readonly columns: readonly PasteColumn[];
  readonly lines: readonly { readonly line: number; readonly fields: readonly string[] }[];
  readonly parts: readonly Part[];
  onMatch(columns: readonly PasteColumn[]): void;
}

/** So many lines show how the rest is read. */
const SHOWN = 4;

/** The first lines under what each column is matched to, and the parts that come of them. */
export function PastedTable({ columns, lines, parts, onMatch }: Props) {
  const sheet = useSheet();
  const change = (k: number, column: Partial<PasteColumn>): void =>
    onMatch(columns.with(k, { ...columns[k]!, ...column }));
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways has to be reachable by keys. */}
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
                    aria-label={`${column.head} is`}
                    value={column.to}
                    onChange={({ currentTarget: { value } }) => {
                      const target = targetOf(value);
                      change(k, { to: value, unit: target ? unitFor(target, sheet.units()) : '' });
                    }}
                  >
                    <option value="">left out</option>
                    {TARGETS.map(({ key, title }) => (
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
      {parts.length > 0 && (
        <ul class="paste-preview">
          {parts.slice(0, SHOWN).map((part) => (
            <li key={part.name}>
              <strong>{part.title}</strong>: {partWords(part)}
            </li>
          ))}
          {parts.length > SHOWN && <li class="aside">and {parts.length - SHOWN} more</li>}
        </ul>
      )}
    </>
  );
}

/** "weight, 4 of them; mass 1.2 g; x −90 mm" */
function partWords(part: Part): string {
  const { mass, weighed, x, y, z } = part.fields;
  const said = { ...(part.shape === 'point' && { mass }), weighed, x, y, z };
  const texts = Object.entries(said).flatMap(([name, text]) =>
    text ? [`${name} ${text.replaceAll(' ', '\u00a0').replace(/^-/, '−')}`] : [],
  );
  return [shapeWords(part), ...texts].join('; ');
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
