import type { JSX } from 'preact';
import { formatQuantity, type OutlineDescription } from '../../../../engine/index';
import { type Frame, ink, lengthWords, moved, type Place, pointingStep, project } from '../../../drawing/index';
import { type CornerPlace, cornerPlace, onView } from './corner-places';

interface CornersHand {
  /** The corner that is taken. */
  readonly taken: number | undefined;
  take(corner: number | undefined): void;
  move(corner: number, place: CornerPlace): void;
  rest(byKeys: boolean): void;
  remove(corner: number): void;
}

interface Props {
  readonly frame: Frame;
  readonly outline: OutlineDescription;
  readonly places: readonly CornerPlace[];
  readonly unit: string;
  readonly hand: CornersHand;
}

/** Half the width of a corner's handle, and radius of what takes a finger, px. */
const HALF = 4;
const FINGER = 12;

/** The corners of an outline over the drawing: arrows go from one to the next, with Shift they move the one that is taken. */
export function CornersOverlay({ frame, outline, places, unit, hand }: Props): JSX.Element | null {
  const { view } = outline;
  if (!frame.views[view]) return null;
  const points = places.map((place) => project(frame, view, ...onView(outline, place)));
  const step = pointingStep(unit === 'in' ? 'inch_pound' : 'metric');
  const key = (event: KeyboardEvent): void => {
    const { taken } = hand;
    const at = taken === undefined ? undefined : places[taken];
    if (event.key === 'Delete' && taken !== undefined) hand.remove(taken);
    else if (event.shiftKey && at && taken !== undefined) {
      const [a, b] = onView(outline, at);
      const next = moved(view, { x: a, y: b, z: b }, event.key, step);
      const place = next && cornerPlace(outline, view === 'plan' ? { x: next.x, y: next.y } : { x: next.x, z: next.z });
      if (!place) return;
      hand.move(taken, place);
      hand.rest(true);
    } else {
      const way = WAYS[event.key];
      if (way === undefined || event.shiftKey || places.length === 0) return;
      hand.take(((taken ?? -Math.min(way, 0)) + way + places.length) % places.length);
    }
    event.preventDefault();
    event.stopPropagation();
  };
  const line = points.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join('L');
  const said = hand.taken === undefined ? undefined : places[hand.taken];
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: the role hands the arrow keys to the corners.
    <g
      role="application"
      tabindex={0}
      data-corners={outline.name}
      aria-label={`Corners of the ${outline.title.toLowerCase()}. ${
        said
          ? `Corner ${hand.taken! + 1} of ${places.length}: ${outline.corner[0].title} ${lengthWords(said[0], unit)}, ${outline.corner[1].title} ${lengthWords(said[1], unit)}.`
          : `${places.length} corners.`
      } Arrow keys go from corner to corner; with Shift they move the one that is taken by ${formatQuantity(step, unit)}. Delete removes it.`}
      onKeyDown={key}
    >
      {points.length > 1 && (
        <path
          d={`M${line}${outline.closed ? 'Z' : ''}`}
          fill="none"
          stroke={ink('focus')}
          stroke-width={1.8}
          pointer-events="none"
        />
      )}
      {points.map(({ x, y }, k) => (
        <g
          key={k}
          data-corner={k}
          class="corner-handle"
          onPointerDown={(event) => follow(event, k, frame, outline, hand)}
        >
          <circle cx={x} cy={y} r={FINGER} fill="none" pointer-events="all" />
          <rect
            x={x - HALF}
            y={y - HALF}
            width={2 * HALF}
            height={2 * HALF}
            fill={k === hand.taken ? ink('focus') : ink('paper')}
            stroke={ink('focus')}
            stroke-width={1.5}
          />
        </g>
      ))}
    </g>
  );
}

const WAYS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };

/** Follows the pointer until it lets go. */
function follow(down: PointerEvent, k: number, frame: Frame, outline: OutlineDescription, hand: CornersHand): void {
  if (down.button !== 0) return;
  down.preventDefault();
  down.stopPropagation();
  const group = (down.currentTarget as Element).closest<SVGGElement>('[tabindex]');
  const box = group!.closest('svg')!.getBoundingClientRect();
  group!.focus({ preventScroll: true });
  hand.take(k);
  const { pointerId } = down;
  const shrunk = frame.width / box.width;
  const { origin } = frame.views[outline.view]!;
  let going = false;
  const go = (event: PointerEvent): void => {
    if (event.pointerId !== pointerId) return;
    const right = ((event.clientX - box.left) * shrunk - origin.x) / frame.scale;
    const below = ((event.clientY - box.top) * shrunk - origin.y) / frame.scale;
    const at: Place = outline.view === 'plan' ? { x: below, y: right } : { x: right, z: -below };
    const place = cornerPlace(outline, at);
    if (!place) return;
    going = true;
    hand.move(k, place);
  };
  const leave = (event: PointerEvent): void => {
    if (event.pointerId !== pointerId) return;
    for (const [name, listener] of listeners) document.removeEventListener(name, listener, true);
    // The place where a corner is let go is no press on the drawing.
    event.stopPropagation();
    if (going) hand.rest(false);
  };
  const listeners = [
    ['pointermove', go],
    ['pointerup', leave],
    ['pointercancel', leave],
  ] as const;
  for (const [name, listener] of listeners) document.addEventListener(name, listener, true);
}
