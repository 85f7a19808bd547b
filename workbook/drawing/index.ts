export { arrowHead } from './dimensions';
export type { Arrangement, Place } from './frame';
export { type Box, inside, lengthInside, overlaps, type Point, type Segment, segmentsOf } from './geometry';
export { ink, LABEL_SIZE, lineKinds, SMALL_SIZE } from './ink';
export { type LabelWish, type PlacedLabel, placeLabels } from './place-labels';
export { ScaleDrawing, type ScaleDrawingProps } from './scale-drawing';
export { textWidth, wrapText } from './text-width';
export { useWidth } from './use-width';
export { type Names, valueAt, valueText } from './values';
