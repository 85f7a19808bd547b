import text from '../../../data/propellers.csv?raw';
import { LENGTH, ONE } from '../../units/index';
import { bladeShapes } from '../blade-shapes';
import { libraryTable } from '../library-table';

export const readPropellers = (file: string, content: string) =>
  libraryTable(
    {
      name: 'propellers',
      title: 'Propellers',
      one: 'propeller',
      doc: 'Usual sizes with a blade shape each. A choice among them gives what is typed of a propeller. A row of your own keeps one that was tuned by its measured pull: with the shift and the chord factor that its piece shows as in use.',
      caution: 'Never run a propeller that is nicked, cracked or out of balance, and stand behind its plane.',
      group: 'shape',
      feeds: 'propeller',
      columns: {
        diameter: { title: 'Diameter', symbol: 'D', dimension: LENGTH, unit: 'mm', tradeUnit: 'in' },
        pitch: { title: 'Pitch', symbol: 'p', dimension: LENGTH, unit: 'mm', tradeUnit: 'in' },
        shape: { title: 'Blade shape', option: bladeShapes.map((row) => row.name) },
        angle_shift: { title: 'Shift of the blade angle', symbol: 'Δβ', dimension: ONE, unit: '°', mayBeBlank: true },
        chord_factor: { title: 'Chord factor', symbol: 'f_c', dimension: ONE, unit: '', mayBeBlank: true },
      },
    },
    file,
    content,
  );

/** Propellers by marked size. */
export const propellers = readPropellers('propellers.csv', text);
