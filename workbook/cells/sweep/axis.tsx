import { useState } from 'preact/hooks';
import { type Axis, writeQuantity } from '../../../engine/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { OptionTicks } from '../shared/option-ticks';
import { Labelled, Pick, type PickOption } from '../shared/pick';
import { RowFaults } from '../shared/row-faults';
import { SetUpEntry } from '../shared/set-up-entry';
import { Typed } from '../shared/typed';

const COUNT = 9;
const LEAST_COUNT = 2;
const MOST_COUNT = 1001;
/** How far a field without limits of its own is swept at first, as a share of what it is now. */
const AROUND = 0.2;

/** An axis over something: a variable along its slide, a choice over all its options, a field around its present value. */
export function newAxis(of: string, sheet: Sheet): Axis {
  const info = sheet.name(of);
  const bare = { of, low: '', high: '', count: COUNT };
  if (info?.kind !== 'field' || info.options) return bare;
  const now = sheet.value(of);
  if (!Number.isFinite(now) || now === 0) return bare;
  const [low, high] = [now * (1 - AROUND), now * (1 + AROUND)].sort((a, b) => a - b);
  const text = (si: number): string => writeQuantity(Number(si.toPrecision(4)), info.unit);
  return { ...bare, low: text(low!), high: text(high!) };
}

/** A piece that flies the design along axes. */
export interface WithAxes {
  readonly id: string;
  readonly name: string;
  readonly axes: readonly Axis[];
}

interface SweepAxisProps {
  readonly cell: WithAxes;
  readonly index: number;
  readonly options: readonly PickOption[];
  onChange(axis: Axis): void;
  readonly onRemove: (() => void) | undefined;
}

/** One axis: what runs, from where to where, in how many values; of a choice, which options. */
export function SweepAxis({ cell, index, options, onChange, onRemove }: SweepAxisProps) {
  const sheet = useSheet();
  const axis = cell.axes[index]!;
  const info = sheet.name(axis.of);
  const title = info?.title ?? axis.of;
  const id = (part: string): string => `${cell.id}-axis${index + 1}-${part}`;
  return (
    <fieldset class="set-up-axis">
      <legend>
        {index === 0 ? 'Along' : 'And along'} {title}
      </legend>
      <div class="set-up-fields">
        <Pick
          id={id('of')}
          label="What runs"
          value={axis.of}
          options={options}
          onPick={(of) => onChange(newAxis(of, sheet))}
        />
        {!info?.options && (
          <>
            <Limit cell={cell} index={index} end="low" title={title} />
            <Limit cell={cell} index={index} end="high" title={title} />
            <Count id={id('count')} axis={axis} onChange={(count) => onChange({ ...axis, count })} />
          </>
        )}
        {onRemove && (
          <button type="button" class="word quiet" onClick={onRemove}>
            Remove<span class="unseen"> the axis {title}</span>
          </button>
        )}
      </div>
      {info?.options && (
        <OptionTicks
          of={axis.of}
          all={info.options}
          taken={axis.options}
          onTake={(options) => {
            const { options: _, ...rest } = axis;
            onChange(options ? { ...rest, options } : rest);
          }}
        />
      )}
      <RowFaults paths={[`${cell.name}.axis${index + 1}.low`, `${cell.name}.axis${index + 1}.high`]} />
    </fieldset>
  );
}

interface LimitProps {
  readonly cell: WithAxes;
  readonly index: number;
  readonly end: 'low' | 'high';
  readonly title: string;
}

function Limit({ cell, index, end, title }: LimitProps) {
  const sheet = useSheet();
  const axis = cell.axes[index]!;
  const path = `${cell.name}.axis${index + 1}.${end}`;
  const word = end === 'low' ? 'From' : 'To';
  const own = sheet.name(`${axis.of}.${end}`) ? sheet.shown(`${axis.of}.${end}`) : '';
  return (
    <SetUpEntry
      word={word}
      label={`${title}, ${word.toLowerCase()}`}
      path={path}
      text={axis[end]}
      placeholder={own === '' ? 'type a value' : own}
    />
  );
}

interface CountProps {
  readonly id: string;
  readonly axis: Axis;
  onChange(count: number): void;
}

function Count({ id, axis, onChange }: CountProps) {
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  return (
    <Labelled id={id} label="How many values">
      <Typed
        id={id}
        numeric
        text={wrong ?? String(axis.count)}
        wrong={wrong === undefined ? undefined : `${id}-wrong`}
        onDone={(text) => {
          const count = Number(text);
          const sound = /^\d+$/.test(text) && count >= LEAST_COUNT && count <= MOST_COUNT;
          setWrong(sound ? undefined : text);
          if (sound && count !== axis.count) onChange(count);
        }}
      />
      {wrong !== undefined && (
        <p class="fault-flag fault" id={`${id}-wrong`} role="alert">
          {countFault(wrong)}
        </p>
      )}
    </Labelled>
  );
}

/** What is wrong with a number of values, and what to type. */
const countFault = (text: string): string =>
  `“${text}” is not a number of values. Type a whole number from ${LEAST_COUNT} to ${MOST_COUNT}.`;
