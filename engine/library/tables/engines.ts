import text from '../../../data/engines.csv?raw';
import { MASS, MOMENT, POWER, RATE, VOLUME } from '../../units/index';
import { libraryTable } from '../library-table';

/** What an engine may burn, in the words of the engine blocks. */
export const FUEL_KINDS = ['glow', 'diesel'] as const;

export const readEngines = (file: string, content: string) =>
  libraryTable(
    {
      name: 'engines',
      title: 'Engines',
      one: 'engine',
      doc: 'Plain two-strokes by size, by their peaks of torque and power. A choice among them gives what is typed of an engine by its data.',
      caution:
        'Of the right size and no more: makes, fuel and silencer change power by a third and more. A timed lap or a tachometer on yours stands before any table. Methanol burns with a flame that cannot be seen.',
      group: 'fuel',
      feeds: 'engine',
      columns: {
        fuel: { title: 'Fuel', option: FUEL_KINDS },
        displacement: { title: 'Displacement', symbol: 'V_h', dimension: VOLUME, unit: 'cm³', tradeUnit: 'in³' },
        peak_torque: { title: 'Peak torque', symbol: 'Q_m', dimension: MOMENT, unit: 'N·m', tradeUnit: 'lbf·in' },
        torque_speed: { title: 'Rpm of peak torque', symbol: 'n_Q', dimension: RATE, unit: 'rpm' },
        peak_power: { title: 'Peak power', symbol: 'W_m', dimension: POWER, unit: 'W', tradeUnit: 'hp' },
        power_speed: { title: 'Rpm of peak power', symbol: 'n_W', dimension: RATE, unit: 'rpm' },
        mass: { title: 'Mass with silencer', symbol: 'm', dimension: MASS, unit: 'g', tradeUnit: 'oz' },
      },
    },
    file,
    content,
  );

/** Glow and diesel engines by size. */
export const engines = readEngines('engines.csv', text);
