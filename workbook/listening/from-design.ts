import type { Cell, ListeningQuestion } from '../../engine/index';

/** What is known of the design that is open. */
interface Reads {
  value(path: string): number;
  namesOfRole(role: string): readonly string[];
}

/** What is listened to, as the form has it. */
export interface Listened {
  readonly drive: 'two_stroke' | 'four_stroke' | 'motor';
  readonly blades: number;
  /** As typed. */
  readonly rpm: string;
}

/** Cycles of the tone in a turn. */
const CYCLES = { two_stroke: 1, four_stroke: 0.5 } as const;

/** Ten turns a minute is finer than anybody expects. */
const TENS = 10;

/** What the design that is open makes one expect. */
export function expectedOf({ value, namesOfRole }: Reads, cells: readonly Cell[]): Listened {
  const [flight] = namesOfRole('flight');
  const [engine] = namesOfRole('engine');
  const turning = flight === undefined ? Number.NaN : (value(`${flight}.shaft_speed`) * 60) / (2 * Math.PI);
  const [propeller] = namesOfRole('propeller');
  const blades = propeller === undefined ? Number.NaN : value(`${propeller}.blades`);
  const electric = cells.some((cell) => cell.kind === 'model' && cell.of === 'electric' && cell.name === engine);
  return {
    drive: electric ? 'motor' : 'two_stroke',
    blades: blades >= 1 ? Math.round(blades) : 2,
    rpm: turning > 0 ? String(Math.round(turning / TENS) * TENS) : '',
  };
}

const LEAST_RPM = 1000;
const MOST_RPM = 50_000;
const MOST_BLADES = 6;

/** The question to a sound, or what is wrong in the form. */
export function questionOf(
  { drive, blades, rpm }: Listened,
  air: ListeningQuestion['air'],
): ListeningQuestion | string {
  const typed = Number(rpm.replace(/\s*rpm\s*$/i, '').replace(/[\s\u00a0,']/g, ''));
  if (rpm.trim() === '') return 'Type the rpm that you expect, roughly: it tells the tone from its octaves.';
  if (!(typed >= LEAST_RPM && typed <= MOST_RPM))
    return `The rpm expected is “${rpm.trim()}”. Type a number from 1000 to 50000.`;
  if (drive !== 'motor') return { about: typed / 60, cycles: CYCLES[drive], ...(air && { air }) };
  if (!(Number.isInteger(blades) && blades >= 1 && blades <= MOST_BLADES))
    return 'The number of blades must be from 1 to 6.';
  return { about: typed / 60, cycles: blades, ...(air && { air }) };
}

/** Air of the design, where it has some. */
export function airOf({ value, namesOfRole }: Reads): ListeningQuestion['air'] {
  const [name] = namesOfRole('air');
  if (name === undefined) return undefined;
  const [pressure, density] = [value(`${name}.pressure`), value(`${name}.density`)];
  return pressure > 0 && density > 0 ? { pressure, density } : undefined;
}

/** Radius of the circle that the design flies, m; NaN where it has none. */
export function radiusOf({ value, namesOfRole }: Reads): number {
  const [flight] = namesOfRole('flight');
  return flight === undefined ? Number.NaN : value(`${flight}.radius`);
}
