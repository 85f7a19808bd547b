import text from '../../../data/tubes.csv?raw';
import { LENGTH, LINEAR_MASS } from '../../units/index';
import { libraryTable } from '../library-table';

const size = { dimension: LENGTH, unit: 'mm', tradeUnit: 'in' } as const;

const readTubes = (file: string, content: string) =>
  libraryTable(
    {
      name: 'tubes',
      title: 'Tubes',
      one: 'tube',
      doc: 'Fuel tube, and metal and carbon tubes by their diameters: what a length of each weighs.',
      group: 'kind',
      columns: {
        kind: { title: 'Kind', words: true, among: ['fuel tube', 'metal tube', 'carbon tube'] },
        diameter: { title: 'Diameter', symbol: 'd', ...size },
        bore: { title: 'Bore', symbol: 'd_i', ...size },
        linear_mass: { title: 'Mass per length', symbol: 'μ', dimension: LINEAR_MASS, unit: 'g/m' },
      },
    },
    file,
    content,
  );

/** Fuel tube, brass, aluminium and carbon tubes. */
export const tubes = readTubes('tubes.csv', text);
