import { type Document, freeName, takenNames, type Variable, type VariablesCell } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

export const newVariable = (taken: ReadonlySet<string>): Variable => ({
  name: freeName('new_variable', taken),
  title: 'New variable',
  symbol: '',
  unit: '',
  text: '0',
  low: '0',
  high: '100',
  step: '',
});

const newVariables = (document: Document): Contents<VariablesCell> => ({
  kind: 'variables',
  rows: [newVariable(takenNames(document))],
});

export const variablesOffers: readonly Offer[] = [
  {
    key: 'variables',
    word: 'Variables',
    about: 'Quantities with a unit and a slide: an engine station, a tip weight, a line length.',
    make: (document) => cellOf(document, 'new_variables', 'New variables', newVariables(document)),
  },
];
