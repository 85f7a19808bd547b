import text from '../../../data/wire.csv?raw';
import { FORCE, LENGTH, LINEAR_MASS, PRESSURE } from '../../units/index';
import { libraryTable } from '../library-table';

const readWire = (file: string, content: string) =>
  libraryTable(
    {
      name: 'wire',
      title: 'Wire and cable',
      one: 'wire',
      doc: 'For landing gear, pushrods, leadouts and hinges: mass per length, least strength and what it breaks at.',
      group: 'group',
      columns: {
        group: { title: 'Group', words: true, among: ['music wire', 'cable'] },
        diameter: { title: 'Diameter', symbol: 'd', dimension: LENGTH, unit: 'mm', tradeUnit: 'in' },
        linear_mass: { title: 'Mass per length', symbol: 'μ', dimension: LINEAR_MASS, unit: 'g/m', mayBeBlank: true },
        strength: { title: 'Least strength', symbol: 'R_m', dimension: PRESSURE, unit: 'MPa', mayBeBlank: true },
        modulus: { title: 'Young’s modulus', symbol: 'E', dimension: PRESSURE, unit: 'GPa', mayBeBlank: true },
        breaking_load: {
          title: 'Least breaking load',
          symbol: 'F_b',
          dimension: FORCE,
          unit: 'N',
          tradeUnit: 'lbf',
          mayBeBlank: true,
        },
      },
    },
    file,
    content,
  );

/** Music wire and small steel cable by diameter. */
export const wire = readWire('wire.csv', text);
