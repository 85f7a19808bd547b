import { type Document, type FormulaCell, freeName, takenNames } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

type Line = FormulaCell['lines'][number];
export const newLine = (taken: ReadonlySet<string>): Line => ({
  name: freeName('new_line', taken),
  text: '0',
  unit: '',
});

const newFormula = (document: Document): Contents<FormulaCell> => ({
  kind: 'formula',
  lines: [newLine(takenNames(document))],
});

export const formulaOffers: readonly Offer[] = [
  {
    key: 'formula',
    word: 'Formula',
    about: 'Lines of calculation from anything that has a name on the sheet.',
    make: (document) => cellOf(document, 'new_formula', 'New formula', newFormula(document)),
  },
];
