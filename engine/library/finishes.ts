import text from '../../data/finishes.csv?raw';
import { AREAL_MASS } from '../units/index';
import { readTable, type Sourced } from './table';

/** A coat of dope or paint, a covering, or a glue line: what it adds to a square metre when dry. */
export interface Finish extends Sourced {
  readonly kind: 'coat' | 'covering' | 'glue';
  /** kg/m². */
  readonly arealMass: number;
}

export const readFinishes = (file: string, content: string): Finish[] =>
  readTable(file, content, (row) => {
    const kind = row.text('kind');
    if (kind !== 'coat' && kind !== 'covering' && kind !== 'glue') {
      throw new RangeError(`kind is "${kind}"; it must be coat, covering or glue`);
    }
    return {
      name: row.name,
      title: row.title,
      kind,
      arealMass: row.quantity('areal_mass', AREAL_MASS),
      source: row.source,
      memory: row.memory,
    };
  });

export const finishes: readonly Finish[] = readFinishes('finishes.csv', text);
