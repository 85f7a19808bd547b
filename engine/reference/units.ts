import { describeDimension, formatNumber, type Unit, units } from '../units/index';
import type { Chapter, TablePiece } from './chapter';

const SYSTEMS: Readonly<Record<Unit['system'], string>> = {
  metric: 'metric',
  inch_pound: 'inch-pound',
  both: 'both',
};

/** Digits of a factor: all that the defined ones have. */
const FACTOR_DIGITS = 10;

/** Every unit that can be typed, by kind of quantity. */
export function unitsChapter(): Chapter {
  const kinds = new Map<string, Unit[]>();
  for (const unit of units) {
    const kind = describeDimension(unit.dimension);
    kinds.set(kind, [...(kinds.get(kind) ?? []), unit]);
  }
  return {
    id: 'units',
    group: 'Formulas',
    title: 'Units',
    pieces: [
      {
        kind: 'text',
        text: 'Any unit of its kind may be typed into any field, also written out (inches, grams), shortened (cu in, lbs, sec.) or without raised digits (cm3); the sheet shows results in metric or in inch-pound units. Factors are exact by definition, NIST SP 811; where a digit is cut off here it is kept inside.',
      },
      ...[...kinds].map(
        ([kind, of]): TablePiece => ({
          kind: 'table',
          title: capital(kind.replace(/^an? /, '')),
          columns: ['unit', 'name', 'is', 'set', 'also typed'],
          rows: of.map((unit) => [
            unit.name || '(none)',
            unit.title,
            size(unit),
            SYSTEMS[unit.system],
            unit.aliases.join(', '),
          ]),
        }),
      ),
    ],
  };
}

function size({ factor, offset }: Unit): string {
  const number = formatNumber(factor, FACTOR_DIGITS);
  return offset === 0 ? number : `(x + ${formatNumber(offset, FACTOR_DIGITS)}) × ${number}`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
