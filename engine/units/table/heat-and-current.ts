import { CELSIUS_ZERO, FAHRENHEIT_DEGREE, FAHRENHEIT_OFFSET, HOUR, INCH, MINUTE, OUNCE_FORCE, TURN } from '../../exact';
import { CHARGE, CURRENT, dimension, RESISTANCE, SPEED_PER_VOLTAGE, TEMPERATURE, VOLTAGE } from '../dimension';
import { type Unit, unit } from '../unit';

const TORQUE_PER_CURRENT = dimension(2, 1, -2, 0, -1);

/** Temperatures on their scales, and what an electric motor and its pack are rated in. */
export const heatAndCurrentUnits: readonly Unit[] = [
  unit('K', 'kelvin', TEMPERATURE, 1, 'both'),
  { ...unit('°C', 'degree Celsius', TEMPERATURE, 1, 'metric', ['degC', '℃']), offset: CELSIUS_ZERO },
  {
    ...unit('°F', 'degree Fahrenheit', TEMPERATURE, FAHRENHEIT_DEGREE, 'inch_pound', ['degF', '℉']),
    offset: FAHRENHEIT_OFFSET,
  },

  unit('mA', 'milliampere', CURRENT, 1e-3, 'both'),
  unit('A', 'ampere', CURRENT, 1, 'both'),
  unit('A·s', 'ampere second', CHARGE, 1, 'both'),
  unit('mAh', 'milliampere hour', CHARGE, 1e-3 * HOUR, 'both', ['mA·h']),
  unit('Ah', 'ampere hour', CHARGE, HOUR, 'both', ['A·h']),
  unit('mV', 'millivolt', VOLTAGE, 1e-3, 'both'),
  unit('V', 'volt', VOLTAGE, 1, 'both'),
  unit('mΩ', 'milliohm', RESISTANCE, 1e-3, 'both', ['mohm']),
  unit('Ω', 'ohm', RESISTANCE, 1, 'both', ['ohm']),
  unit('rpm/V', 'turn per minute and volt', SPEED_PER_VOLTAGE, TURN / MINUTE, 'both'),
  unit('N·m/A', 'newton metre per ampere', TORQUE_PER_CURRENT, 1, 'metric'),
  unit('ozf·in/A', 'ounce-force inch per ampere', TORQUE_PER_CURRENT, OUNCE_FORCE * INCH, 'inch_pound'),
];
