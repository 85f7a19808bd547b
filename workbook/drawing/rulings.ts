import { type Frame, project } from './frame';
import type { Box, Point, Segment } from './geometry';
import { LABEL_SIZE, LINE_HEIGHT } from './ink';
import { textWidth } from './text-width';

/** A word that stands on the drawing whatever the design. */
export interface Caption {
  readonly text: string;
  readonly at: Point;
}

const CENTRE_OVERHANG = 9;

/** Axis of symmetry of the plan and reference line of the side view, a little longer than the model. */
export function centrelinesOf(frame: Frame): Segment[] {
  const lines: Segment[] = [];
  const { plan, side } = frame.views;
  if (plan) {
    const a = project(frame, 'plan', plan.extent.top, 0);
    const b = project(frame, 'plan', plan.extent.bottom, 0);
    lines.push({ x0: a.x, y0: a.y - CENTRE_OVERHANG, x1: b.x, y1: b.y + CENTRE_OVERHANG });
  }
  if (side) {
    const a = project(frame, 'side', side.extent.left, 0);
    const b = project(frame, 'side', side.extent.right, 0);
    lines.push({ x0: a.x - CENTRE_OVERHANG, y0: a.y, x1: b.x + CENTRE_OVERHANG, y1: b.y });
  }
  return lines;
}

/** Names of the views, and whither the lines go. */
export function captionsOf(frame: Frame, arrow: Segment | undefined): Caption[] {
  const captions: Caption[] = [];
  const { plan, side } = frame.views;
  if (plan) captions.push({ text: 'plan', at: { x: plan.area.left + 2, y: plan.area.bottom - 5 } });
  if (side) captions.push({ text: 'side', at: { x: side.area.left + 2, y: side.area.bottom - 5 } });
  if (arrow) {
    const x = arrow.x1 - 2;
    captions.push(
      { text: 'to the', at: { x, y: arrow.y0 - 5 - LINE_HEIGHT } },
      { text: 'pilot', at: { x, y: arrow.y0 - 5 } },
    );
  }
  return captions;
}

export const captionBox = (c: Caption): Box => ({
  left: c.at.x - 1,
  right: c.at.x + textWidth(c.text, LABEL_SIZE) + 1,
  top: c.at.y - LABEL_SIZE,
  bottom: c.at.y + 2,
});
