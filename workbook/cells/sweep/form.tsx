import type { Axis, NameInfo, SweepCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { AddFrom, type PickOption } from '../shared/pick';
import { spaced } from '../shared/progress-words';
import { nameOptions, Wanted } from '../shared/wanted';
import { newAxis, SweepAxis } from './axis';

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
      <Wanted id={cell.id} wanted={cell.wanted} sheet={sheet} onChange={(wanted) => change({ wanted })} />
    </>
  );
}

const axisLength = ({ count, options }: Axis, info: NameInfo | undefined): number =>
  info?.options ? (options?.length ?? info.options.length) : count;

const AXES: ReadonlySet<NameInfo['kind']> = new Set(['variable', 'choice', 'field']);
/** What may run along an axis. */
export const isAxis = (info: NameInfo): boolean => info.settable && AXES.has(info.kind);
