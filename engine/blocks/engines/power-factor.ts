import type { Field } from '../block';
import { PLAIN } from '../measures';

/** What flown laps correct the power of an engine by. */
export const powerFactor = {
  power_factor: {
    ...PLAIN,
    symbol: 'k_P',
    title: 'Power factor',
    doc: 'What the torque of the engine is multiplied by at every rpm. A fit to flown laps can find it.',
    default: 1,
    range: [0.1, 5],
    basis: '1 until flown laps say otherwise.',
    advanced: true,
  } as Field,
} as const;
