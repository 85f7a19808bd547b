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
  strip: { word: 'strip or square', doc: 'Length, two sides and material.', made: ['material', 'width', 'thickness'] },
  tube: { word: 'tube', doc: 'Length, outer diameter, wall and material.', made: ['material', 'diameter', 'wall'] },
  tapered: {
    word: 'tapered sheet',
    doc: 'Length, width and thickness at both ends, and material.',
    made: ['material', 'thickness'],
  },
  triangle: {
    word: 'triangle',
    doc: 'Triangle stock or a gusset: length, the two legs, and material.',
    made: ['material', 'width', 'height'],
  },
  ribs: {
    word: 'ribs',
    doc: 'Section, chord, thickness of the sheet, what is cut away, and material; how many stands below.',
    made: ['material', 'thickness'],
  },
  core: { word: 'foam core', doc: 'Section, chords, span, what is cut away, and material.', made: ['material'] },
  run: { word: 'wire, line or tube', doc: 'A length off the roll, by its mass per length.', made: ['wire', 'length'] },
};

export const shapeList: readonly (ShapeWords & { readonly shape: PartShape })[] = PART_SHAPES.map((shape) => ({
  shape,
  ...shapes[shape],
}));

/** The shape with what it is made of: "sheet, balsa medium, 2.5 mm". */
export function shapeWords(part: Part): string {
  const { word, made } = shapes[part.shape];
  const said = made.map((field) => (part.fields[field] ?? '').replaceAll('_', ' ')).filter((text) => text !== '');
  const count = (part.fields.count ?? '').trim();
  const many = count === '' ? [] : [`${count} of them`];
  return [part.fuel ? 'fuel' : word, ...many, ...said].join(', ');
}
