import { partsReasons, partsResults } from '../blocks/parts/results';
import { partsTheory } from '../blocks/parts/theory';
import { partFields } from '../sheet/cells/part-fields';
import { PART_SHAPES } from '../sheet/document';
import { theoryPieces, under } from './blocks';
import { type Chapter, fieldAnchor, type Piece, resultAnchor } from './chapter';
import { quantityEntry } from './quantities';

/** The weight and balance table: its rows are typed, and its sums are results like those of a block. */
export function partsChapter(): Chapter {
  const shapes = PART_SHAPES.map((shape) => [
    shape,
    partFields(shape)
      .filter((field) => !seen.has(field.name))
      .map((field) => field.title.toLowerCase())
      .join(', '),
  ]);
  const reasons: Piece[] = [{ kind: 'list', items: Object.values(partsReasons) }];
  return {
    id: 'block.parts',
    group: 'Pieces of the model',
    title: 'Parts',
    pieces: [
      {
        kind: 'text',
        text: 'The table of weight and balance: one row for each part, with its mass and where it stands. What has been on the scale stands in place of its estimate.',
      },
      { kind: 'table', title: 'What each shape needs', columns: ['shape', 'needs'], rows: shapes },
      ...under(
        'fields.parts',
        'What a row takes',
        [...everyField().values()].map((field) => ({
          kind: 'entry',
          id: fieldAnchor('parts', field.name),
          symbol: field.symbol,
          title: field.title,
          name: `parts.ROW.${field.name}`,
          doc: field.doc,
          facts: [field.dimension ? field.unit || 'plain number' : 'a name'],
          notes: [],
        })),
      ),
      ...under(
        'results.parts',
        'Results',
        Object.entries(partsResults).map(([name, spec]) =>
          quantityEntry(resultAnchor('parts', name), `parts.${name}`, spec),
        ),
      ),
      ...theoryPieces('parts', partsTheory),
      ...under('reasons.parts', 'Why there may be no answer', reasons),
    ],
  };
}

/** Fields that every shape has. */
const seen: ReadonlySet<string> = new Set(
  partFields('point')
    .map((field) => field.name)
    .filter((name) => PART_SHAPES.every((shape) => partFields(shape).some((field) => field.name === name))),
);

function everyField() {
  return new Map(PART_SHAPES.flatMap((shape) => partFields(shape).map((field) => [field.name, field] as const)));
}
