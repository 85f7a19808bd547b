import type { JSX } from 'preact';
import type { Point } from '../../drawing/index';
import type { Handle, Way } from './moves';
import type { Hand } from './props';
import { inSentence, listed } from './words';

interface Props {
  readonly handles: readonly Handle[];
  readonly hand: Hand;
  /** Of the picture over which they lie. */
  readonly width: number;
  readonly height: number;
  /** A mark was pressed and let go at its place. */
  onTap(at: Point): void;
}

/** Pixels that a finger goes before it is clear along which of two axes. */
const CLEAR = 4;

/** The ringed marks of the present design, to be taken with pointer or finger; keys move them from the chart itself. */
export function NowHandles({ handles, hand, width, height, onTap }: Props): JSX.Element {
  return (
    <>
      {handles.map((handle) => (
        <div
          key={handle.key}
          class="chart-now"
          data-moves={handle.ways.map(({ path }) => path).join(' ')}
          data-along={handle.ways.length === 1 ? handle.ways[0]!.along : 'both'}
          aria-hidden="true"
          title={`Drag to set ${listed(handle.ways.map(({ title }) => inSentence(title)))}`}
          style={{ left: `${(100 * handle.at.x) / width}%`, top: `${(100 * handle.at.y) / height}%` }}
          onPointerDown={(event) => take(event, handle, hand, width, () => onTap(handle.at))}
        />
      ))}
    </>
  );
}

/** Follows the pointer until it lets go. The mark may vanish meanwhile, where a design has no answer, so the page listens. */
function take(event: PointerEvent, { at, ways }: Handle, hand: Hand, width: number, tapped: () => void): void {
  const picture = (event.currentTarget as HTMLElement).parentElement;
  const box = picture?.getBoundingClientRect();
  if (event.button !== 0 || !box || box.width === 0) return;
  event.preventDefault();
  const { pointerId, clientX, clientY } = event;
  const scale = width / box.width;
  let way: Way | undefined = ways.length === 1 ? ways[0] : undefined;
  let moved = false;
  const follow = (now: PointerEvent): void => {
    if (now.pointerId !== pointerId) return;
    const by: Point = { x: (now.clientX - clientX) * scale, y: (now.clientY - clientY) * scale };
    if (!way && Math.hypot(by.x, by.y) < CLEAR) return;
    way ??= ways.find(({ along }) => along === (Math.abs(by.x) >= Math.abs(by.y) ? 'across' : 'up')) ?? ways[0]!;
    moved = true;
    hand.move(way.path, way.textAt({ x: at.x + by.x, y: at.y + by.y }));
  };
  const leave = (now: PointerEvent): void => {
    if (now.pointerId !== pointerId) return;
    for (const [name, listener] of listeners) document.removeEventListener(name, listener);
    if (moved) hand.rest(false);
    else tapped();
  };
  const listeners = [
    ['pointermove', follow],
    ['pointerup', leave],
    ['pointercancel', leave],
  ] as const;
  for (const [name, listener] of listeners) document.addEventListener(name, listener);
}
