import type { Shape } from '../../engine/index';
import { breakLine, cutAt, pilotArrow } from './cut-lines';
import { type DimensionLine, dimensionBox, dimensionLines, dimensionStrokes } from './dimensions';
import { type Arrangement, type Frame, frameFor, project, projectAll, type View } from './frame';
import { type Box, type Point, type Segment, segmentsOf } from './geometry';
import { movedShapes } from './ghost';
import { LABEL_SIZE } from './ink';
import { type LabelText, labelText, rankOf } from './labels';
import { type PartStyle, partStyle } from './parts';
import { type LabelWish, type PlacedLabel, placeLabels } from './place-labels';
import { textWidth } from './text-width';
import type { Names } from './values';

/** A shape of the model on the page. */
export interface DrawnShape {
  readonly key: string;
  readonly view: View;
  readonly part: string;
  readonly style: PartStyle;
  readonly kind: 'mark' | 'circle' | 'path';
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly radius: number;
}
export interface DrawnLabel {
  readonly lines: readonly string[];
  readonly bold: boolean;
  readonly placed: PlacedLabel;
  /** The side of the label that its point is on: the text is set against it. */
  readonly anchor: 'start' | 'middle' | 'end';
}
export interface Caption {
  readonly text: string;
  readonly at: Point;
}
/** Everything that is on the drawing, in pixels. */
export interface Picture {
  readonly frame: Frame;
  readonly shapes: readonly DrawnShape[];
  readonly ghost: readonly DrawnShape[];
  readonly centrelines: readonly Segment[];
  readonly dimensions: readonly DimensionLine[];
  readonly breaks: readonly Point[];
  readonly arrow: Segment | undefined;
  readonly captions: readonly Caption[];
  readonly labels: readonly DrawnLabel[];
  /** Labels for which the drawing has no room; they are written under it. */
  readonly unplaced: readonly string[];
  /** Unit of the bare figures on the dimension lines. */
  readonly unit: string;
  /** Names of the parts that stand elsewhere in the baseline. */
  readonly moved: readonly string[];
}
export interface PictureInput {
  readonly shapes: readonly Shape[];
  readonly ghost?: readonly Shape[] | undefined;
  readonly names: Names;
  readonly values: Float64Array;
  readonly arrangement: Arrangement;
  readonly width: number;
  /** The last picture, so that frame and labels keep still while something moves. */
  readonly before?: Picture | undefined;
}

export const LINE_HEIGHT = LABEL_SIZE + 2;
export const MARK_RADIUS = 6;
/** Where the lines to the pilot are cut, from the left edge of the plan. */
const CUT = 12;
const CENTRE_OVERHANG = 9;

function drawn(frame: Frame, shape: Shape, key: string): DrawnShape | undefined {
  const view = frame.views[shape.view];
  if (!view) return undefined;
  const all = projectAll(frame, shape);
  const points = shape.part === 'line' && shape.view === 'plan' ? cutAt(all, view.area.left + CUT) : all;
  if (points.length === 0 || points.some((p) => !Number.isFinite(p.x + p.y))) return undefined;
  const kind = points.length > 1 ? 'path' : shape.radius === undefined ? 'mark' : 'circle';
  return {
    key,
    view: shape.view,
    part: shape.part,
    style: partStyle(shape.part, shape.view),
    kind,
    points,
    closed: shape.closed ?? false,
    radius: (shape.radius ?? 0) * frame.scale,
  };
}

function drawnAll(frame: Frame, shapes: readonly Shape[]): DrawnShape[] {
  return shapes
    .flatMap((shape, k) => drawn(frame, shape, `${shape.part}-${k}`) ?? [])
    .sort((a, b) => a.style.layer - b.style.layer);
}

const circlePoints = (centre: Point, radius: number): Point[] =>
  Array.from({ length: 12 }, (_, k) => ({
    x: centre.x + radius * Math.cos((k * Math.PI) / 6),
    y: centre.y + radius * Math.sin((k * Math.PI) / 6),
  }));

function strokesOf(shape: DrawnShape): Segment[] {
  if (shape.kind === 'mark') return [];
  if (shape.kind === 'circle') return segmentsOf(circlePoints(shape.points[0]!, shape.radius), true);
  return segmentsOf(shape.points, shape.closed);
}

const around = (p: Point, r: number): Box => ({ left: p.x - r, right: p.x + r, top: p.y - r, bottom: p.y + r });

/** Axis of symmetry of the plan and reference line of the side view, a little longer than the model. */
function centrelinesOf(frame: Frame): Segment[] {
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

function captionsOf(frame: Frame, arrow: Segment | undefined): Caption[] {
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

const captionBox = (c: Caption): Box => ({
  left: c.at.x - 1,
  right: c.at.x + textWidth(c.text, LABEL_SIZE) + 1,
  top: c.at.y - LABEL_SIZE,
  bottom: c.at.y + 3,
});

/** Unit of lengths on this sheet: that of the first labelled station, else millimetres. */
function lengthUnit(shapes: readonly Shape[], names: Names): string {
  for (const shape of shapes) {
    const info = shape.label === undefined ? undefined : names.get(shape.label);
    if (info && info.dimension.length === 1 && info.dimension.time === 0 && info.dimension.mass === 0) return info.unit;
  }
  return 'mm';
}

const middleOf = (points: readonly Point[]): Point => {
  const a = points[Math.floor((points.length - 1) / 2)]!;
  const b = points[Math.ceil((points.length - 1) / 2)]!;
  return points.length % 2 === 1 ? a : { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
};

/** Lays the whole drawing out; undefined when no part of the model can be drawn. */
export function layOutPicture(input: PictureInput): Picture | undefined {
  const { shapes, names, values, before } = input;
  const frame = frameFor(shapes, input.arrangement, input.width, before?.frame);
  if (!frame) return undefined;
  const present = drawnAll(frame, shapes);
  const movedList = movedShapes(shapes, input.ghost ?? []);
  const ghost = drawnAll(frame, movedList);
  const unit = lengthUnit(shapes, names);
  const dimensions = dimensionLines(shapes, frame, unit);
  const ends = present.filter((s) => s.part === 'line' && s.view === 'plan').map((s) => s.points.at(-1)!);
  const breaks = breakLine(ends);
  const arrow = pilotArrow(ends);
  const captions = captionsOf(frame, arrow);
  const centrelines = centrelinesOf(frame);

  const wishes: (LabelWish & { text: LabelText; rank: number })[] = [];
  const labelled = new Set<string>();
  for (const [k, shape] of shapes.entries()) {
    const on = present.find((d) => d.key === `${shape.part}-${k}`);
    const text = labelText(shape, shapes, names, values);
    if (!on || !text || labelled.has(shape.label!)) continue;
    labelled.add(shape.label!);
    wishes.push({
      key: shape.label!,
      at: middleOf(on.points),
      settings: text.settings.map((lines) => ({
        width: Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 4,
        height: lines.length * LINE_HEIGHT,
      })),
      clear: on.kind === 'mark' ? MARK_RADIUS : on.radius,
      text,
      rank: rankOf(shape.part),
    });
  }
  wishes.sort((a, b) => a.rank - b.rank);

  const places = new Map(before?.labels.map((l) => [l.placed.key, l.placed.place]));
  const placed = placeLabels(
    wishes,
    {
      frame: { left: 1, top: 1, right: frame.width - 1, bottom: frame.height - LINE_HEIGHT - 6 },
      taken: [
        ...present.filter((s) => s.kind === 'mark').map((s) => around(s.points[0]!, MARK_RADIUS)),
        ...dimensions.map(dimensionBox),
        ...captions.map(captionBox),
        ...(arrow ? [{ left: arrow.x1, right: arrow.x0, top: arrow.y0 - 3, bottom: arrow.y0 + 3 }] : []),
      ],
      strokes: [
        ...present.flatMap(strokesOf),
        ...dimensions.flatMap(dimensionStrokes),
        ...centrelines,
        ...segmentsOf(breaks, false),
      ],
    },
    places,
  );
  const labels = placed.map((p): DrawnLabel => {
    const wish = wishes.find((w) => w.key === p.key)!;
    const anchor = p.box.left > wish.at.x ? 'start' : p.box.right < wish.at.x ? 'end' : 'middle';
    return { lines: wish.text.settings[p.setting]!, bold: wish.text.bold, placed: p, anchor };
  });
  return {
    frame,
    shapes: present,
    ghost,
    centrelines,
    dimensions,
    breaks,
    arrow,
    captions,
    labels,
    unplaced: wishes.filter((w) => !placed.some((p) => p.key === w.key)).map((w) => w.text.settings[0]!.join(', ')),
    unit,
    moved: [...new Set(movedList.map((s) => partStyle(s.part).word))],
  };
}

/** The drawing in words, for those who hear it. */
export function pictureSummary(title: string, picture: Picture): string {
  const said = [...picture.labels.map((l) => l.lines.join(' ')), ...picture.unplaced];
  const views = [picture.frame.views.plan && 'plan', picture.frame.views.side && 'side view']
    .filter(Boolean)
    .join(' and ');
  const sentences = [`${title}: ${views}, scale 1 : ${picture.frame.denominator}.`];
  if (said.length > 0) sentences.push(`${said.join('; ')}.`);
  if (picture.moved.length > 0) sentences.push(`Stands elsewhere in the baseline: ${picture.moved.join(', ')}.`);
  return sentences.join(' ');
}
