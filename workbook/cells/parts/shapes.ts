import { PART_SHAPES, type Part, type PartShape } from '../../../engine/index';

interface ShapeWords {
  readonly word: string;
  readonly doc: string;
  /** Texts that say what it is made of. */
  readonly made: readonly string[];
}

/** What a person calls each shape. */
const shapes: Readonly<Record<PartShape, ShapeWords>> = {
  point: { word: 'weight', doc: 'A thing whose mass is known or read from a packet.', made: [] },
  sheet: { word: 'sheet', doc: 'Area, thickness and material.', made: ['material', 'thickness'] },
  stack: { word: 'stack of layers', doc: 'Area cut from a stack of sheets and glue lines.', made: ['stack'] },
  rod: { word: 'rod or wire', doc: 'Length, diameter and material.', made: ['material', 'diameter'] },
  solid: { word: 'solid', doc: 'Volume and material.', made: ['material'] },
};

export const shapeList: readonly (ShapeWords & { readonly shape: PartShape })[] = PART_SHAPES.map((shape) => ({
  shape,
  ...shapes[shape],
}));

/** The shape with what it is made of: "sheet, balsa medium, 2.5 mm". */
export function shapeWords(part: Part): string {
  const { word, made } = shapes[part.shape];
  const said = made.map((field) => (part.fields[field] ?? '').replaceAll('_', ' ')).filter((text) => text !== '');
  return [part.fuel ? 'fuel' : word, ...said].join(', ');
}
