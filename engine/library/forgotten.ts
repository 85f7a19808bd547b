import text from '../../data/often-forgotten.csv?raw';
import { MASS } from '../units/index';
import { readTable, type Sourced } from './table';

/** A small thing that tables of parts often lack. */
export interface OftenForgotten extends Sourced {
  /** Usual mass, kg, and as text with its unit. */
  readonly mass: number;
  readonly massText: string;
  /** Where it usually is: formulas that name blocks by their role (wing, tail, body, engine, leadouts). */
  readonly place: { readonly x: string; readonly y: string; readonly z: string };
  /** Words in a part's title that say that it's there already, in small letters. */
  readonly saidBy: readonly string[];
  /** Words in a part's title beside which it's missed; none: beside anything. */
  readonly beside: readonly string[];
  readonly about: string;
}

const readForgotten = (file: string, content: string): OftenForgotten[] =>
  readTable(file, content, (row) => {
    const saidBy = words(row.text('said_by'));
    if (saidBy.length === 0) throw new RangeError('said_by is blank');
    return {
      name: row.name,
      title: row.title,
      mass: row.quantity('mass', MASS),
      massText: row.text('mass'),
      place: { x: row.text('x'), y: row.text('y'), z: row.text('z') },
      saidBy,
      beside: words(row.text('beside')),
      about: row.text('about'),
      source: row.source,
      memory: row.memory,
    };
  });

const words = (text: string): string[] => (text === '' ? [] : text.toLowerCase().split('|'));

export const oftenForgotten: readonly OftenForgotten[] = readForgotten('often-forgotten.csv', text);
