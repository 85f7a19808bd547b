import * as v from 'valibot';
import { type DrawingCell, LARGEST_PICTURE, type TracedPlan } from '../document';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { plain } from './plain';

/** Metres and degrees; beyond these nothing is a plan of a model. */
const bounded = v.pipe(v.number(), v.minValue(-1000), v.maxValue(1000));
const pixels = v.pipe(v.number(), v.minValue(1), v.maxValue(20_000));

/** Pixels as a browser decodes them and nothing that could do anything else. */
const picture = v.pipe(
  v.string(),
  v.maxLength(LARGEST_PICTURE),
  v.regex(/^data:image\/(?:png|jpeg|webp);base64,[A-Za-z0-9+/]+=*$/),
);

const plan: v.GenericSchema<TracedPlan> = v.strictObject({
  view: v.picklist(['plan', 'side']),
  name: v.string(),
  image: v.exactOptional(picture),
  kept: v.exactOptional(v.string()),
  width: pixels,
  height: pixels,
  scale: v.pipe(v.number(), v.minValue(1e-9), v.maxValue(1000)),
  right: bounded,
  down: bounded,
  angle: bounded,
  opacity: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  printed: v.exactOptional(v.boolean()),
});

/** The scale drawing: what it shows comes from the blocks and from the tables of parts. */
export const drawingCell: CellKindOf<DrawingCell> = {
  ...plain<DrawingCell>(),
  kind: 'drawing',
  schema: v.strictObject({
    ...baseEntries('drawing'),
    parts: v.exactOptional(v.boolean()),
    plan: v.exactOptional(plan),
  }),
};
