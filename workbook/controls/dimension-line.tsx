import { useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import { fractionOf } from './slide';

export interface DimensionLineProps {
  /** Path it sets, for finding it in the page. */
  path: string;
  label: string;
  /** All numbers in the unit that `shown` is written in. */
  value: number;
  low: number;
  high: number;
  step: number;
  baseline?: number;
  shown: string;
  describedBy?: string;
  onMove(value: number): void;
  /** The hand (or the key) has let go. */
  onRest(byKeys: boolean): void;
}

/** A dimension line with extension lines at the limits; the slide is the thumb of a real range input, so keys and readers work. */
export function DimensionLine(props: DimensionLineProps) {
  const { low, high, step, value, baseline } = props;
  const id = useId();
  const byPointer = useRef(false);
  const held = useSignal<number | undefined>(undefined);
  const usable = Number.isFinite(low) && Number.isFinite(high) && high > low;
  const shownValue = held.value ?? (Number.isFinite(value) ? value : low);

  const rest = () => {
    if (held.value === undefined) return;
    held.value = undefined;
    props.onRest(!byPointer.current);
    byPointer.current = false;
  };

  return (
    <div class="dimension-line">
      <svg class="dimension-drawing" aria-hidden="true" focusable="false">
        <defs>
          <marker
            id={`${id}-arrow`}
            viewBox="0 0 10 6"
            refX="10"
            refY="3"
            markerWidth="10"
            markerHeight="6"
            orient="auto-start-reverse"
          >
            <path d="M0 0.6 L10 3 L0 5.4 Z" />
          </marker>
        </defs>
        <line x1="0" x2="0" y1="2" y2="100%" />
        <line x1="100%" x2="100%" y1="2" y2="100%" />
        <line x1="0" x2="100%" y1="50%" y2="50%" marker-start={`url(#${id}-arrow)`} marker-end={`url(#${id}-arrow)`} />
        {usable && (
          <line
            class="value-tick on-paper"
            x1={`${100 * fractionOf(shownValue, low, high)}%`}
            x2={`${100 * fractionOf(shownValue, low, high)}%`}
            y1="10%"
            y2="90%"
          />
        )}
        {usable && baseline !== undefined && Number.isFinite(baseline) && (
          <line
            class="baseline-tick"
            x1={`${100 * fractionOf(baseline, low, high)}%`}
            x2={`${100 * fractionOf(baseline, low, high)}%`}
            y1="20%"
            y2="80%"
          />
        )}
      </svg>
      <input
        type="range"
        data-path={props.path}
        aria-label={props.label}
        aria-valuetext={props.shown}
        aria-describedby={props.describedBy}
        disabled={!usable}
        min={usable ? low : 0}
        max={usable ? high : 1}
        step={usable ? step : 'any'}
        value={usable ? shownValue : 0}
        onInput={(event) => {
          held.value = event.currentTarget.valueAsNumber;
          props.onMove(held.value);
        }}
        onPointerDown={() => {
          byPointer.current = true;
        }}
        onChange={rest}
        onPointerCancel={rest}
        onBlur={rest}
      />
    </div>
  );
}
