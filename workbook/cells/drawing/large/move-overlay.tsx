import type { JSX } from 'preact';
import type { TracedPlan, UnitSet } from '../../../../engine/index';
import { type Frame, ink, pointingStep } from '../../../drawing/index';
import { movedTo, type OnDrawing } from './placing';

const KEYS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};
const LONG = 10;
const DATUM: OnDrawing = { right: 0, down: 0 };

interface Props {
  readonly frame: Frame;
  readonly plan: TracedPlan;
  readonly set: UnitSet;
  onLay(plan: TracedPlan): void;
}

/** Takes the picture anywhere on its view and moves it. */
export function MoveOverlay({ frame, plan, set, onLay }: Props): JSX.Element | null {
  const view = frame.views[plan.view];
  if (!view) return null;
  const { left, right, top, bottom } = view.area;
  const key = (event: KeyboardEvent): void => {
    const way = KEYS[event.key];
    if (!way) return;
    const step = pointingStep(set) * (event.shiftKey ? LONG : 1);
    onLay(movedTo(plan, DATUM, { right: way[0] * step, down: way[1] * step }));
    event.preventDefault();
    event.stopPropagation();
  };
  const take = (down: PointerEvent): void => {
    if (down.button !== 0) return;
    const svg = (down.currentTarget as Element).closest('svg')!;
    const metres = frame.width / svg.getBoundingClientRect().width / frame.scale;
    const go = (event: PointerEvent): void => {
      if (event.pointerId !== down.pointerId) return;
      onLay(
        movedTo(plan, DATUM, {
          right: (event.clientX - down.clientX) * metres,
          down: (event.clientY - down.clientY) * metres,
        }),
      );
    };
    const leave = (event: PointerEvent): void => {
      if (event.pointerId !== down.pointerId) return;
      document.removeEventListener('pointermove', go);
      document.removeEventListener('pointerup', leave);
      document.removeEventListener('pointercancel', leave);
    };
    document.addEventListener('pointermove', go);
    document.addEventListener('pointerup', leave);
    document.addEventListener('pointercancel', leave);
  };
  return (
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: the role hands the arrow keys to the picture.
    <g
      role="application"
      tabindex={0}
      aria-label="The picture. Arrow keys move it, with Shift ten times as far."
      onKeyDown={key}
    >
      <rect
        class="plan-grip"
        x={left}
        y={top}
        width={right - left}
        height={bottom - top}
        fill="none"
        stroke={ink('focus')}
        stroke-dasharray="6 4"
        pointer-events="all"
        onPointerDown={take}
      />
    </g>
  );
}
