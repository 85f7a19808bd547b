import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import { formatQuantity } from '../../engine/index';
import { type Frame, type Place, project, type View } from './frame';
import type { Point } from './geometry';
import { ink, lineKinds } from './ink';
import { alongBody, areaOf, markOf, type PartMark, type PlacedPart } from './placed-part';
import { round } from './shape-line';
import { moved, stepOf } from './spot';

/** What a hand does to the parts on a drawing. */
export interface PartsHand {
  /** Path of the part that is taken. */
  readonly taken: Signal<string | undefined>;
  /** What is said of a part: mass, place, share of the moment, what holds it. */
  words(part: PlacedPart): string;
  move(part: PlacedPart, place: Place, metresPerPixel: number): void;
  rest(byKeys: boolean): void;
}

interface Props {
  readonly frame: Frame;
  readonly parts: readonly PlacedPart[];
  readonly unit: string;
  /** Missing: they are only looked at. */
  readonly hand?: PartsHand | undefined;
}

/** The parts to scale in both views, the largest first; each can be taken and moved. */
export function PartsOverlay({ frame, parts, unit, hand }: Props): JSX.Element {
  return (
    <>
      {(['plan', 'side'] as const).map(
        (view) =>
          frame.views[view] && <ViewParts key={view} view={view} frame={frame} parts={parts} unit={unit} hand={hand} />,
      )}
    </>
  );
}

/** Pixels that a pointer goes before it moves a part. */
const CLEAR = 3;

function ViewParts({ view, frame, parts, unit, hand }: Props & { readonly view: View }): JSX.Element {
  const drawn = parts
    .map((part) => ({ part, mark: markOf(frame, view, part) }))
    .sort((a, b) => areaOf(b.mark) - areaOf(a.mark));
  const taken = drawn.find(({ part }) => part.path === hand?.taken.value);
  const take = (event: PointerEvent, part: PlacedPart): void => {
    if (!hand || event.button !== 0) return;
    event.preventDefault();
    const scrolls = event.pointerType === 'touch' && hand.taken.peek() !== part.path;
    if (scrolls) tap(event, () => choose(hand, part, event));
    else {
      choose(hand, part, event);
      follow(event, view, frame, part, hand);
    }
  };
  return (
    <g data-parts={view} fill="none" stroke={ink('focus')} stroke-width={lineKinds.thin.width}>
      {drawn.map(({ part, mark }) => (
        <g
          key={part.path}
          data-placed={part.path}
          class={hand ? 'placed-part' : undefined}
          pointer-events={hand ? 'all' : undefined}
          onPointerDown={hand && ((event) => take(event, part))}
        >
          <title>{part.title}</title>
          <MarkShape mark={mark} />
        </g>
      ))}
      {hand && <Keys {...{ view, frame, parts, unit, hand }} taken={taken} take={take} />}
    </g>
  );
}

const choose = (hand: PartsHand, part: PlacedPart, event: PointerEvent): void => {
  hand.taken.value = part.path;
  const group = (event.currentTarget as Element | null)?.closest('[data-parts]');
  group?.querySelector<SVGGElement>('[tabindex]')?.focus({ preventScroll: true });
};

/** A finger that neither slid nor was taken for scrolling has chosen. */
function tap(down: PointerEvent, then: () => void): void {
  const { pointerId, clientX, clientY } = down;
  const leave = (event: PointerEvent): void => {
    if (event.pointerId !== pointerId) return;
    document.removeEventListener('pointerup', leave);
    document.removeEventListener('pointercancel', leave);
    if (event.type === 'pointerup' && Math.hypot(event.clientX - clientX, event.clientY - clientY) < 3 * CLEAR) then();
  };
  document.addEventListener('pointerup', leave);
  document.addEventListener('pointercancel', leave);
}

/** Follows the pointer until it lets go: the part goes as far as the pointer does. */
function follow(down: PointerEvent, view: View, frame: Frame, part: PlacedPart, hand: PartsHand): void {
  const svg = (down.currentTarget as Element).closest('svg')!;
  const shrunk = frame.width / svg.getBoundingClientRect().width;
  const { pointerId, clientX, clientY } = down;
  let going = false;
  const go = (event: PointerEvent): void => {
    if (event.pointerId !== pointerId) return;
    const by: Point = { x: (event.clientX - clientX) * shrunk, y: (event.clientY - clientY) * shrunk };
    going ||= Math.hypot(by.x, by.y) >= CLEAR;
    if (!going) return;
    const { x, y, z } = part.at;
    const place =
      view === 'plan'
        ? { x: x + by.y / frame.scale, y: y + by.x / frame.scale }
        : { x: x + by.x / frame.scale, z: z - by.y / frame.scale };
    hand.move(part, place, 1 / frame.scale);
  };
  const leave = (event: PointerEvent): void => {
    if (event.pointerId !== pointerId) return;
    for (const [name, listener] of listeners) document.removeEventListener(name, listener);
    if (going) hand.rest(false);
  };
  const listeners = [
    ['pointermove', go],
    ['pointerup', leave],
    ['pointercancel', leave],
  ] as const;
  for (const [name, listener] of listeners) document.addEventListener(name, listener);
}

interface KeysProps extends Required<Props> {
  readonly view: View;
  readonly hand: PartsHand;
  readonly taken: { readonly part: PlacedPart; readonly mark: PartMark } | undefined;
  take(event: PointerEvent, part: PlacedPart): void;
}

/** Radius of the ring about the part that is taken, px: a finger's width across. */
const RING = 14;

/** One stop of Tab for all parts of a view: arrows go from part to part, with Shift they move the one that is taken. */
function Keys({ view, frame, parts, unit, hand, taken, take }: KeysProps): JSX.Element {
  const order = alongBody(parts);
  const step = stepOf(unit);
  const key = (event: KeyboardEvent): void => {
    const next = keyed(event, order, taken?.part);
    if (next) hand.taken.value = next.path;
    else if (event.key === 'Escape' && taken) hand.taken.value = undefined;
    else {
      const spot = event.shiftKey && taken ? moved(view, taken.part.at, event.key, step) : undefined;
      if (!spot || !taken) return;
      hand.move(taken.part, view === 'plan' ? { x: spot.x, y: spot.y } : { x: spot.x, z: spot.z }, 0);
      hand.rest(true);
    }
    event.preventDefault();
    event.stopPropagation();
  };
  const at = taken && project(frame, view, taken.part.at.x, view === 'plan' ? taken.part.at.y : taken.part.at.z);
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: the role hands the arrow keys to the parts.
    <g
      role="application"
      tabindex={0}
      class="parts-keys"
      aria-label={`Parts in the ${view === 'plan' ? 'plan' : 'side view'}. ${taken ? hand.words(taken.part) : 'None is taken.'} Arrow keys go from part to part; with Shift they move the one that is taken by ${formatQuantity(step, unit)}.`}
      onKeyDown={key}
      onFocus={() => {
        if (!taken && order[0] && !hand.taken.peek()) hand.taken.value = order[0].path;
      }}
      onPointerDown={taken && ((event) => take(event, taken.part))}
      data-taken={taken?.part.path}
    >
      {at && taken && (
        <>
          <circle cx={round(at.x)} cy={round(at.y)} r={RING} stroke="none" pointer-events="all" />
          <g stroke-width={lineKinds.outline.width}>
            <MarkShape mark={taken.mark} />
            <path d={`M${round(at.x) - RING},${round(at.y)}h8m12,0h8M${round(at.x)},${round(at.y) - RING}v8m0,12v8`} />
          </g>
        </>
      )}
    </g>
  );
}

/** The part that an arrow key without Shift leads to. */
function keyed(
  { key, shiftKey }: KeyboardEvent,
  order: readonly PlacedPart[],
  now: PlacedPart | undefined,
): PlacedPart | undefined {
  if (shiftKey) return undefined;
  const at = now ? order.findIndex(({ path }) => path === now.path) : -1;
  if (key === 'ArrowRight' || key === 'ArrowDown') return order[Math.min(at + 1, order.length - 1)];
  if (key === 'ArrowLeft' || key === 'ArrowUp') return order[Math.max(at - 1, 0)];
  if (key === 'Home') return order[0];
  return key === 'End' ? order.at(-1) : undefined;
}

/** A box to scale; the circle of a rod seen end on; a dashed disc that is not to scale. */
function MarkShape({ mark }: { readonly mark: PartMark }): JSX.Element {
  const { at } = mark;
  if (mark.is === 'box') {
    const { width, height } = mark;
    return (
      <rect x={round(at.x - width / 2)} y={round(at.y - height / 2)} width={round(width)} height={round(height)} />
    );
  }
  const dash = mark.is === 'disc' ? '3 2' : undefined;
  return <circle cx={round(at.x)} cy={round(at.y)} r={round(mark.radius)} stroke-dasharray={dash} />;
}
