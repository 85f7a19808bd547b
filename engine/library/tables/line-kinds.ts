import text from '../../../data/line_kinds.csv?raw';
import { FORCE, LENGTH, LINEAR_MASS, ONE } from '../../units/index';
import { libraryTable } from '../library-table';

/** What a line is made of, in the words of the lines block. */
export const LINE_MAKES = ['stranded_steel', 'solid_steel', 'polyethylene_braid'] as const;

export const readLineKinds = (file: string, content: string) =>
  libraryTable(
    {
      name: 'line_kinds',
      title: 'Line kinds',
      one: 'line kind',
      doc: 'One line of each kind. A choice among them gives what is typed of the lines.',
      caution:
        'What the packet says, and the pull test of the whole system by the current rule book, stand before any table. Ends and knots break first.',
      group: 'kind',
      feeds: 'lines',
      columns: {
        kind: { title: 'Kind', option: LINE_MAKES },
        diameter: { title: 'Diameter', symbol: 'd', dimension: LENGTH, unit: 'mm', tradeUnit: 'in' },
        linear_mass: {
          title: 'Mass per length',
          symbol: 'μ',
          dimension: LINEAR_MASS,
          unit: 'g/m',
          mayBeBlank: true,
        },
        breaking_load: {
          title: 'Breaking load',
          symbol: 'F_b',
          dimension: FORCE,
          unit: 'N',
          tradeUnit: 'lbf',
          mayBeBlank: true,
        },
        drag_coefficient: { title: 'Drag coefficient', symbol: 'C_d', dimension: ONE, unit: '', mayBeBlank: true },
      },
    },
    file,
    content,
  );

/** Stranded, solid and braided lines by diameter. */
export const lineKinds = readLineKinds('line_kinds.csv', text);
