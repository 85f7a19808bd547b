import { LENGTH, type Shape, sameDimension, shownUnit, unitNamed } from '../../engine/index';
import { breakLine, pilotArrow } from './cut-lines';
import { type DimensionLine, dimensionBox, dimensionLines, dimensionStrokes } from './dimensions';
import { type DrawnShape, drawnAll, strokesOf } from './drawn-shapes';
import { type Arrangement, type Frame, frameFor } from './frame';
import { type Box, type Point, type Segment, segmentsOf } from './geometry';
import { movedShapes } from './ghost';
import { LINE_HEIGHT, MARK_RADIUS } from './ink';
import { type DrawnLabel, labelWishes, placeWishes, saidOf } from './labels';
import { partWord } from './parts';
import { type Caption, captionBox, captionsOf, centrelinesOf } from './rulings';
import type { Names } from './values';

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
  /** What else the frame has to hold; it is drawn by somebody else. */
  readonly also?: readonly Shape[] | undefined;
  /** The last picture, so that frame and labels keep still while something moves. */
  readonly before?: Picture | undefined;
}

const around = (p: Point, r: number): Box => ({ left: p.x - r, right: p.x + r, top: p.y - r, bottom: p.y + r });

/** A shape with a place that has no answer is not drawn. */
const isWhole = (shape: Shape): boolean => shape.points.every(Number.isFinite) && Number.isFinite(shape.radius ?? 0);

/** Unit of lengths on this sheet: that of the first labelled station, else millimetres. */
function lengthUnit(shapes: readonly Shape[], names: Names): string {
  for (const shape of shapes) {
    const info = shape.label === undefined ? undefined : names.get(shape.label);
    if (info && sameDimension(info.dimension, LENGTH)) return info.unit;
  }
  const anyLength = [...names.values()].find(({ dimension }) => sameDimension(dimension, LENGTH));
  return shownUnit('mm', unitNamed(anyLength?.unit ?? '')?.system === 'inch_pound' ? 'inch_pound' : 'metric');
}

/** Lays the whole drawing out; undefined when no part of the model can be drawn. */
export function layOutPicture(input: PictureInput): Picture | undefined {
  const { names, values, before } = input;
  const shapes = input.shapes.filter(isWhole);
  const frame = frameFor(
    [...shapes, ...(input.also ?? []).filter(isWhole)],
    input.arrangement,
    input.width,
    before?.frame,
  );
  if (!frame) return undefined;
  const present = drawnAll(frame, shapes);
  const movedList = movedShapes(shapes, (input.ghost ?? []).filter(isWhole));
  const ghost = drawnAll(frame, movedList);
  const unit = lengthUnit(shapes, names);
  const dimensions = dimensionLines(shapes, frame, unit);
  const ends = present.filter((s) => s.part === 'line' && s.view === 'plan').map((s) => s.points.at(-1)!);
  const breaks = breakLine(ends);
  const arrow = pilotArrow(ends);
  const captions = captionsOf(frame, arrow);
  const centrelines = centrelinesOf(frame);

  const wishes = labelWishes(shapes, present, names, values);
  const labels = placeWishes(
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
      crowded: input.arrangement === 'strip',
    },
    before?.labels ?? [],
  );
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
    unplaced: wishes.filter((w) => !labels.some((l) => l.placed.key === w.key)).map((w) => saidOf(w.text)),
    unit,
    moved: [...new Set(movedList.map((s) => partWord(s.part)))],
  };
}

/** Scale at which these shapes are drawn on paper, 1 : so much; undefined where nothing can be drawn. */
export const paperDenominator = (shapes: readonly Shape[], width: number): number | undefined =>
  frameFor(shapes.filter(isWhole), 'paper', width)?.denominator;
