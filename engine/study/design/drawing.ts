import type { AnyBlock, Shape } from '../../blocks/block';
import type { Compiled } from '../../sheet/compile';
import type { Live } from '../../sheet/live';
import { isMotor } from './motor';
import { type PlacedBlock, placedBlocks } from './placed-blocks';

/**
 * The scale drawing of one design: what every block of the document adds to it. Values are one a slot. `behind`: names of
 * blocks whose values are those of a design before.
 */
export function drawingOf(
  compiled: Compiled,
  blocks: ReadonlyMap<string, AnyBlock>,
  values: Float64Array,
  behind: ReadonlySet<string> = NONE,
): readonly Shape[] {
  const drawn = placedBlocks(compiled, blocks).map((placed) => {
    const shapes = drawBlock(placed, values);
    const old = behind.has(placed.name);
    return {
      kind: placed.block.kind,
      shapes: old ? shapes.map((shape) => ({ ...shape, behind: true as const })) : shapes,
    };
  });
  // What has a block of its own is drawn by that one: the tank of a tank block stands for the box that the body has for its drag.
  const own = new Set(
    drawn.filter(({ kind, shapes }) => shapes.some(({ part }) => part === kind)).map(({ kind }) => kind),
  );
  return drawn
    .flatMap(({ kind, shapes }) => shapes.filter(({ part }) => part === kind || !own.has(part)))
    .filter((shape) => shape.points.every(Number.isFinite) && Number.isFinite(shape.radius ?? 0));
}

const NONE: ReadonlySet<string> = new Set();

/** The drawing of the design as it stands; what is behind is drawn as it was before, and says so. */
export function drawingOfLive({ compiled, state }: Live, blocks: ReadonlyMap<string, AnyBlock>): readonly Shape[] {
  const steps = compiled.program.steps.filter((_, k) => state.behind[k] === 1);
  const behind = new Set(steps.map(({ path }) => path.split('.', 1)[0]!));
  return drawingOf(compiled, blocks, state.m, behind);
}

/** A design that a block's equations refuse has no drawing of that block. */
function drawBlock({ block, name, title, fields, results, outlines }: PlacedBlock, values: Float64Array): Shape[] {
  const motor = isMotor({ of: block.kind, title });
  try {
    const shapes = (block.draw?.(values, fields, results, outlines) ?? []).map((shape) => labelled(shape, block, name));
    return motor ? shapes.map(asMotor) : shapes;
  } catch (error) {
    if (error instanceof RangeError) return [];
    throw error;
  }
}

/** The same outline under the name that the builder of an electric model gives it. */
const asMotor = (shape: Shape): Shape =>
  shape.part.startsWith('engine') ? { ...shape, part: shape.part.replace('engine', 'motor') } : shape;

/** A declaration names its own results by the block's kind or role; in this document the block may have another name. */
function labelled(shape: Shape, block: AnyBlock, name: string): Shape {
  const [first, ...rest] = shape.label?.split('.') ?? [];
  if (first === undefined || first === name || (first !== block.kind && first !== block.role)) return shape;
  return { ...shape, label: [name, ...rest].join('.') };
}
