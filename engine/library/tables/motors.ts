import text from '../../../data/motors.csv?raw';
import { CURRENT, MASS, RESISTANCE, SPEED_PER_VOLTAGE } from '../../units/index';
import { libraryTable } from '../library-table';

export const readMotors = (file: string, content: string) =>
  libraryTable(
    {
      name: 'motors',
      title: 'Electric motors',
      one: 'motor',
      doc: 'Motors by size, by their three constants. A choice among them gives what is typed of an electric motor.',
      caution:
        'Of the right size and no more: what the data sheet of yours says stands before any table, its greatest current above all. Arm only when the model is held.',
      feeds: 'engine',
      columns: {
        speed_per_volt: { title: 'Speed per volt', symbol: 'K_v', dimension: SPEED_PER_VOLTAGE, unit: 'rpm/V' },
        resistance: { title: 'Resistance', symbol: 'R', dimension: RESISTANCE, unit: 'mΩ' },
        idle_current: { title: 'Idle current', symbol: 'I_0', dimension: CURRENT, unit: 'A' },
        mass: { title: 'Mass', symbol: 'm', dimension: MASS, unit: 'g', tradeUnit: 'oz' },
      },
    },
    file,
    content,
  );

/** Electric motors by size. */
export const motors = readMotors('motors.csv', text);
