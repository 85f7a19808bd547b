import type { Axis, NameInfo } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { AddFrom, type PickOption } from '../shared/pick';
import { spaced } from '../shared/progress-words';
import { nameOptions } from '../shared/wanted';
import { newAxis, SweepAxis, type WithAxes } from './axis';

const MOST_AXES = 4;

/** Along what the design is flown, and how many designs that makes. */
export function AxesForm({ cell, onChange }: { cell: WithAxes; onChange(axes: readonly Axis[]): void }) {
  const sheet = useSheet();
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
          onChange={(to) => onChange(cell.axes.with(k, to))}
          onRemove={cell.axes.length > 1 ? () => onChange(cell.axes.toSpliced(k, 1)) : undefined}
        />
      ))}
      <div class="set-up-fields">
        {cell.axes.length < MOST_AXES && (
          <AddFrom
            id={`${cell.id}-add-axis`}
            label={cell.axes.length === 0 ? 'Along' : 'And along'}
            options={free('')}
            onAdd={(of) => onChange([...cell.axes, newAxis(of, sheet)])}
          />
        )}
      </div>
      <p class="aside">
        {cell.axes.length === 0
          ? 'Pick what is to run through its values.'
          : `${spaced(count)} designs${cell.axes.length === 1 ? '' : `: ${cell.axes.map((axis) => axisLength(axis, sheet.name(axis.of))).join(' × ')}`}.`}
      </p>
    </>
  );
}

const axisLength = ({ count, options }: Axis, info: NameInfo | undefined): number =>
  info?.options ? (options?.length ?? info.options.length) : count;

const AXES: ReadonlySet<NameInfo['kind']> = new Set(['variable', 'choice', 'field']);
/** What may run along an axis. */
export const isAxis = (info: NameInfo): boolean => info.settable && AXES.has(info.kind);
