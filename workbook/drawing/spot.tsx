import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { formatQuantity, toSI, type UnitSet } from '../../engine/index';
import { type Frame, type Place, project, type View } from './frame';
import { ink, lineKinds } from './ink';

/** A place in space, metres. */
export interface Spot {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** How far an arrow key moves a cross, m; with Shift held ten times as far. */
export const pointingStep = (set: UnitSet): number => (set === 'metric' ? 0.001 : toSI(0.05, 'in'));
const LONG = 10;
/** The same by the unit that is shown. */
export const stepOf = (unit: string): number => pointingStep(unit === 'in' ? 'inch_pound' : 'metric');

interface CrossesProps {
  readonly frame: Frame;
  /** Where the crosses are; arrow keys write it. */
  readonly spot: Signal<Spot>;
  readonly unit: string;
  onTake(place: Place): void;
}

/** A cross in a ring in each view, moved by arrow keys and taken by Enter. */
export function Crosses({ frame, spot, unit, onTake }: CrossesProps): JSX.Element {
  const room = useRef<SVGGElement>(null);
  useEffect(() => {
    room.current?.querySelector<SVGGElement>('[tabindex]')?.focus({ preventScroll: true });
  }, []);
  const cross = (view: View): JSX.Element | undefined => {
    if (!frame.views[view]) return undefined;
    const place = placeIn(view, spot.value);
    const at = project(frame, view, spot.value.x, view === 'plan' ? spot.value.y : spot.value.z);
    if (!Number.isFinite(at.x) || !Number.isFinite(at.y)) return undefined;
    const move = (event: KeyboardEvent): void => {
      if (event.key === 'Enter') onTake(place);
      const next = moved(view, spot.value, event.key, stepOf(unit) * (event.shiftKey ? LONG : 1));
      if (next) spot.value = next;
      if (next || event.key === 'Enter') event.preventDefault();
    };
    return (
      // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: the role hands the arrow keys to the cross.
      <g
        role="application"
        tabindex={0}
        aria-label={`Cross in the ${view === 'plan' ? 'plan' : 'side view'}, ${placeWords(place, unit)}. Arrow keys move it by ${formatQuantity(stepOf(unit), unit)}, with Shift by ${formatQuantity(LONG * stepOf(unit), unit)}; Enter takes the place, Escape leaves it.`}
        onKeyDown={move}
      >
        <circle cx={at.x} cy={at.y} r={12} stroke="none" />
        <path d={`M${at.x - 9},${at.y}h18M${at.x},${at.y - 9}v18m-5,-9a5,5,0,1,0,10,0a5,5,0,1,0,-10,0`} />
      </g>
    );
  };
  const { width } = lineKinds.outline;
  return (
    <g ref={room} data-mark="spot" fill="none" stroke={ink('focus')} stroke-width={width}>
      {cross('plan')}
      {cross('side')}
    </g>
  );
}

const placeIn = (view: View, { x, y, z }: Spot): Place => (view === 'plan' ? { x, y } : { x, z });

/** The spot moved as the cross is seen to move: the plan has its nose up and the pilot at the left, the side its nose left. */
export function moved(view: View, spot: Spot, key: string, step: number): Spot | undefined {
  const right = key === 'ArrowRight' ? step : key === 'ArrowLeft' ? -step : 0;
  const up = key === 'ArrowUp' ? step : key === 'ArrowDown' ? -step : 0;
  if (right === 0 && up === 0) return undefined;
  return view === 'plan'
    ? { ...spot, x: spot.x - up, y: spot.y + right }
    : { ...spot, x: spot.x + right, z: spot.z + up };
}

/** "station 62 mm, −515 mm from the centreline". */
export function placeWords(place: Place, unit: string): string {
  const station = `station ${lengthWords(place.x, unit)}`;
  return 'y' in place
    ? `${station}, ${lengthWords(place.y, unit)} from the centreline`
    : `${station}, height ${lengthWords(place.z, unit)}`;
}

/** As fine as it is taken. */
export const lengthWords = (metres: number, unit: string): string =>
  formatQuantity(Math.round(metres / stepOf(unit)) * stepOf(unit), unit);
