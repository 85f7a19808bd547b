import text from '../../../data/finishes.csv?raw';
import { AREAL_MASS } from '../../units/index';
import { libraryTable } from '../library-table';

export const readFinishes = (file: string, content: string) =>
  libraryTable(
    {
      name: 'finishes',
      title: 'Finishes, coverings and glue',
      one: 'finish',
      doc: 'Mass on one square metre when dry, for one coat.',
      group: 'kind',
      columns: {
        kind: { title: 'Kind', words: true, among: ['coat', 'covering', 'glue'] },
        areal_mass: { title: 'Areal mass', symbol: 'w', dimension: AREAL_MASS, unit: 'g/m²', tradeUnit: 'oz/yd²' },
      },
    },
    file,
    content,
  );

/** Coats of dope and paint, coverings, glue lines: what each adds to a square metre when dry. */
export const finishes = readFinishes('finishes.csv', text);
