import { shownUnit, type UnitSet } from '../units/index';

/** A value in a unit; in another unit in brackets behind it where the sentence gives both. */
const HOLE = /\{(\w+)\|([^}]+)\}(?: \(\{\1\|([^}]+)\}\))?/g;

/**
 * Fills the holes of a sentence, in the units of a design: of a value that stands in both sets its own comes first. `show` gives
 * undefined where there is no value.
 */
export function fillCaution(
  sentence: string,
  show: (name: string, unit: string) => string | undefined,
  set: UnitSet = 'metric',
): string {
  return sentence.replace(/\[([^\]]*)\]/g, (_, piece: string) => {
    let missing = false;
    const shown = (name: string, unit: string): string => {
      const value = show(name, unit);
      missing ||= value === undefined;
      return value ?? '';
    };
    const filled = piece.replace(HOLE, (_hole, name: string, unit: string, other: string | undefined) => {
      if (other === undefined) return shown(name, shownUnit(unit, set));
      const [first, second] = set === 'metric' ? [unit, other] : [other, unit];
      return `${shown(name, first)} (${shown(name, second)})`;
    });
    return missing ? '' : filled;
  });
}
