import type { Field } from '../block';
import { NEWTONS } from '../measures';

export const lapFields = {
  floor: {
    ...NEWTONS,
    symbol: 'T_f',
    title: 'Least pull wanted',
    doc: 'Below it the pilot no longer feels the model on the lines.',
    default: Number.NaN,
    range: [0.1, 200],
    basis: 'The weight of the model.',
  } as Field,
} as const;
