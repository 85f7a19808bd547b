import text from '../../../data/packs.csv?raw';
import { CHARGE, MASS, ONE, RESISTANCE, VOLTAGE } from '../../units/index';
import { libraryTable } from '../library-table';

const readPacks = (file: string, content: string) =>
  libraryTable(
    {
      name: 'packs',
      title: 'Battery packs',
      one: 'pack',
      doc: 'Packs by cells and capacity, with the resistance of cells and leads. A choice among them gives what is typed of the pack of an electric motor.',
      caution:
        'Of the right size and no more: weigh yours, and let its printed greatest current stand before any table. Charge as its maker says, never unwatched; a puffed or dented pack is done.',
      feeds: 'engine',
      columns: {
        cells: { title: 'Cells', symbol: 'n', dimension: ONE, unit: '' },
        capacity: { title: 'Capacity', symbol: 'Q_b', dimension: CHARGE, unit: 'mAh' },
        voltage: { title: 'Voltage in the middle of the flight', symbol: 'U', dimension: VOLTAGE, unit: 'V' },
        pack_resistance: { title: 'Resistance', symbol: 'R_p', dimension: RESISTANCE, unit: 'mΩ' },
        mass: { title: 'Mass', symbol: 'm', dimension: MASS, unit: 'g', tradeUnit: 'oz' },
      },
    },
    file,
    content,
  );

/** Lithium polymer packs by cells and capacity. */
export const packs = readPacks('packs.csv', text);
