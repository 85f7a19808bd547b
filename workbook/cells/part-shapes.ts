import type { Part, PartShape } from '../../engine/index';

/** What a person calls each shape, and what of its texts says what it is made of. */
const shapes: Readonly<Record<PartShape, { readonly word: string; readonly made: readonly string[] }>> = {
  point: { word: 'weight', made: [] },
  sheet: { word: 'sheet', made: ['material', 'thickness'] },
  stack: { word: 'stack', made: ['stack'] },
  rod: { word: 'rod', made: ['material', 'diameter'] },
  solid: { word: 'block', made: ['material'] },
};

/** The shape with what it is made of: "sheet, balsa medium, 2.5 mm". */
export function shapeWords(part: Part): string {
  const { word, made } = shapes[part.shape];
  const said = made.map((field) => (part.fields[field] ?? '').replaceAll('_', ' ')).filter((text) => text !== '');
  return [part.fuel ? 'fuel' : word, ...said].join(', ');
}
