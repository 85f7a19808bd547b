import type { Axis, NameInfo, SweepCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { spaced } from '../progress-words';
import { titleOf } from './offer';
import { AddFrom, type PickOption } from './pick';
import { newAxis, SweepAxis } from './sweep-axis';

const MOST_AXES = 4;

/** What is swept, from where to where in how many values, and which results are asked for. */
export function SweepForm({ cell }: { cell: SweepCell }) {
  const sheet = useSheet();
  const change = (to: Partial<SweepCell>): void => sheet.changeCell({ ...cell, ...to });
  const swept = cell.axes.map((axis) => axis.of);
  const free = (of: string): PickOption[] =>
    nameOptions(sheet, isAxis).filter(({ value }) => value === of || !swept.includes(value));
  const count = cell.axes.reduce((product, axis) => product * axisLength(axis, sheet.name(axis.of)), 1);
  return (
    <>
      {cell.axes.map((axis, k) => (
        <SweepAxis
          // An axis is known by its place: its texts have paths by it.
          key={k}
          cell={cell}
          index={k}
          options={free(axis.of)}
          onChange={(to) => change({ axes: cell.axes.with(k, to) })}
          onRemove={cell.axes.length > 1 ? () => change({ axes: cell.axes.toSpliced(k, 1) }) : undefined}
        />
      ))}
      <div class="set-up-fields">
        {cell.axes.length < MOST_AXES && (
          <AddFrom
            id={`${cell.id}-add-axis`}
            label={cell.axes.length === 0 ? 'Along' : 'And along'}
            what="axis"
            options={free('')}
            onAdd={(of) => change({ axes: [...cell.axes, newAxis(of, sheet)] })}
          />
        )}
      </div>
      <p class="aside">
        {cell.axes.length === 0
          ? 'Pick what is to run through its values.'
          : `${spaced(count)} designs${cell.axes.length === 1 ? '' : `: ${cell.axes.map((axis) => axisLength(axis, sheet.name(axis.of))).join(' × ')}`}.`}
      </p>
      <Wanted cell={cell} sheet={sheet} onChange={(wanted) => change({ wanted })} />
    </>
  );
}

const axisLength = ({ count, options }: Axis, info: NameInfo | undefined): number =>
  info?.options ? (options?.length ?? info.options.length) : count;

interface WantedProps {
  readonly cell: SweepCell;
  readonly sheet: Sheet;
  onChange(wanted: readonly string[]): void;
}

/** Results that are computed for every design. */
function Wanted({ cell, sheet, onChange }: WantedProps) {
  const options = nameOptions(sheet, isResult).filter(({ value }) => !cell.wanted.includes(value));
  return (
    <fieldset class="set-up-list">
      <legend>Results asked for</legend>
      <ul>
        {cell.wanted.map((path) => {
          const title = sheet.name(path)?.title ?? `${path} (not there)`;
          return (
            <li key={path}>
              {title}{' '}
              <button
                type="button"
                class="word quiet"
                onClick={() => onChange(cell.wanted.filter((each) => each !== path))}
              >
                take off<span class="unseen"> {title}</span>
              </button>
            </li>
          );
        })}
      </ul>
      <div class="set-up-fields">
        <AddFrom
          id={`${cell.id}-add-result`}
          label={cell.wanted.length === 0 ? 'Result' : 'One more result'}
          what="result"
          options={options}
          onAdd={(path) => onChange([...cell.wanted, path])}
        />
      </div>
    </fieldset>
  );
}

const AXES: ReadonlySet<NameInfo['kind']> = new Set(['variable', 'choice', 'field']);
const RESULTS: ReadonlySet<NameInfo['kind']> = new Set(['result', 'formula', 'fold', 'part']);

const isAxis = (info: NameInfo): boolean => info.settable && AXES.has(info.kind);
/** The details of every part, and what notes say, would hide the rest. */
const isResult = (info: NameInfo): boolean => RESULTS.has(info.kind) && !info.options && !isAside(info);
const isAside = ({ kind, detail, settable }: NameInfo): boolean =>
  kind === 'part' ? detail === true || settable : kind === 'formula' && detail === true;

/** Names of the sheet as a list to pick from, by the cell that they belong to. */
function nameOptions(sheet: Sheet, fits: (info: NameInfo) => boolean): PickOption[] {
  const cells = new Map(sheet.document.value.cells.map((cell) => [cell.id, titleOf(cell)]));
  const unique = new Map([...sheet.names.value.values()].filter(fits).map((info) => [info.path, info]));
  return [...unique.values()].map(({ path, title, cell, unit, suffix }) => ({
    value: path,
    title: unit || suffix ? `${title}, ${suffix || unit}` : title,
    group: cells.get(cell) ?? '',
  }));
}
