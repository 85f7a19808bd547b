import { formatQuantity, readEntry, shownUnit, type UnitSet } from '../../engine/index';

/** One thing to measure for a row of one's own. */
interface Measurement {
  readonly key: string;
  readonly title: string;
  /** Unit of a bare number. */
  readonly unit: string;
  /** What a blank stands for; missing: it must be typed. */
  readonly blank?: string;
}

/** How a number of a table comes from a ruler and a scale. */
export interface Measuring {
  readonly title: string;
  readonly about: string;
  /** The column that it gives. */
  readonly column: string;
  readonly unit: string;
  readonly of: readonly Measurement[];
  /** The formula, from texts with their units. */
  formula(texts: Readonly<Record<string, string>>): string;
  source(texts: Readonly<Record<string, string>>): string;
}

/** Density from a weighed sheet, mass per area from a weighing before and after: by table of the library. */
export const MEASURINGS: Readonly<Record<string, Measuring>> = {
  materials: {
    title: 'From a sheet on the scale',
    about:
      'Weigh a whole sheet, or several at once, and measure it. The thickness counts most: measure it at several places.',
    column: 'density',
    unit: 'kg/m³',
    of: [
      { key: 'mass', title: 'Mass', unit: 'g' },
      { key: 'length', title: 'Length', unit: 'mm' },
      { key: 'width', title: 'Width', unit: 'mm' },
      { key: 'thickness', title: 'Thickness', unit: 'mm' },
      { key: 'count', title: 'How many sheets', unit: '', blank: '1' },
    ],
    formula: ({ mass, length, width, thickness, count }) =>
      `${mass} ÷ (${[...(count === '1' ? [] : [count]), length, width, thickness].join(' × ')})`,
    source: ({ mass, length, width, thickness, count }) =>
      `weighed: ${count === '1' ? '' : `${count} sheets, `}${mass}, ${length} × ${width} × ${thickness}`,
  },
  finishes: {
    title: 'From a weighing before and after',
    about: 'Weigh a piece bare and again when it is dry, and say how much of it was covered, both faces counted.',
    column: 'areal_mass',
    unit: 'g/m²',
    of: [
      { key: 'before', title: 'Before', unit: 'g' },
      { key: 'after', title: 'After, dry', unit: 'g' },
      { key: 'area', title: 'Area, both faces counted', unit: 'cm²' },
      { key: 'count', title: 'How many coats', unit: '', blank: '1' },
    ],
    formula: ({ before, after, area, count }) =>
      `(${after} - ${before}) ÷ ${count === '1' ? area : `(${count} × ${area})`}`,
    source: ({ before, after, area, count }) =>
      `weighed before and after: ${before}, ${after} on ${area}${count === '1' ? '' : `, ${count} coats`}`,
  },
};

export type Measured =
  | { readonly ok: true; readonly formula: string; readonly source: string; readonly shown: string }
  | { readonly ok: false; readonly faults: readonly string[] };

/** What the measurements give, or what is wrong with them; nothing is wrong with one that is not typed yet. */
export function measuredFrom(measuring: Measuring, typed: Readonly<Record<string, string>>, set: UnitSet): Measured {
  const faults: string[] = [];
  const texts: Record<string, string> = {};
  for (const { key, title, unit, blank } of measuring.of) {
    const text = (typed[key] ?? '').trim() || blank;
    const shown = shownUnit(unit, set);
    if (text === undefined) return { ok: false, faults };
    const read = readEntry(text, shown, set);
    if (!read.ok) faults.push(`${title}: ${read.fault.message}`);
    else if (!(read.si > 0)) faults.push(`${title} is “${text}”. Type more than nothing.`);
    // A comma within a formula parts the arguments of a function.
    const plain = text.replace(/(\d),(?=\d)/, '$1.');
    texts[key] = /[a-z°%"'²³]/i.test(plain) || shown === '' ? plain : `${plain} ${shown}`;
  }
  if (faults.length > 0) return { ok: false, faults };
  const formula = measuring.formula(texts);
  const result = readEntry(formula, shownUnit(measuring.unit, set), set);
  if (!result.ok) return { ok: false, faults: [result.fault.message] };
  if (!(result.si > 0)) {
    return { ok: false, faults: ['It weighs no more after than before. Look at both readings.'] };
  }
  const shown = formatQuantity(result.si, shownUnit(measuring.unit, set));
  return { ok: true, formula, source: measuring.source(texts), shown };
}
