import { type LogRow, readEntry, type UnitSet } from '../../../../engine/index';
import type { PasteColumn, Target } from '../../shared/paste-columns';
import { type Decimal, withPoint } from '../../shared/separators';
import { newLogRow } from '../new-log';
import { type DayOrder, readDay } from './day';
import { OWN } from './targets';

export interface PastedFlights {
  readonly rows: readonly LogRow[];
  readonly faults: readonly { readonly line: number; readonly message: string }[];
}

/** What lines are read by. */
export interface FlightReading {
  readonly columns: readonly PasteColumn[];
  readonly targets: readonly Target[];
  readonly decimal: Decimal;
  /** Undefined: not chosen yet, and no day of the text needs it. */
  readonly order: DayOrder | undefined;
  readonly units: UnitSet;
}

/** Every line as a flight, or what is wrong with it. */
export function readFlights(
  lines: readonly { readonly line: number; readonly fields: readonly string[] }[],
  reading: FlightReading,
): PastedFlights {
  const rows: LogRow[] = [];
  const faults: { line: number; message: string }[] = [];
  for (const { line, fields } of lines) {
    if (fields.every((field) => field.trim() === '')) continue;
    if (fields.length !== reading.columns.length) {
      const message = `has ${fields.length} fields; the first line has ${reading.columns.length}. A field with the separator in it stands in double quotes.`;
      faults.push({ line, message });
      continue;
    }
    const read = flightOf(fields, reading);
    if ('faults' in read) faults.push(...read.faults.map((message) => ({ line, message })));
    else rows.push(read.row);
  }
  return { rows, faults };
}

function flightOf(
  fields: readonly string[],
  reading: FlightReading,
): { readonly row: LogRow } | { readonly faults: readonly string[] } {
  const faults: string[] = [];
  const texts: Record<string, string> = {};
  const values: Record<string, string> = {};
  const laps: number[] = [];
  for (const [k, { to, unit }] of reading.columns.entries()) {
    const target = reading.targets.find(({ key }) => key === to);
    const text = (fields[k] ?? '').trim();
    if (!target || text === '') continue;
    const read = cellOf(text, target, unit, reading);
    if ('wrong' in read) faults.push(`${target.title}: ${read.wrong}`);
    else if (to === 'lap') laps.push(read.si);
    else if (to.startsWith(OWN)) values[to.slice(OWN.length)] = read.text;
    else texts[to] = read.text;
  }
  const splits = texts.splits === undefined ? laps : splitsIn(texts.splits, reading.decimal);
  if (typeof splits === 'string') faults.push(splits);
  if (faults.length > 0 || typeof splits === 'string') return { faults };
  return { row: { ...newLogRow(''), laps: '', ...texts, values, ...timedBy(splits, texts) } };
}

/** Laps that were timed one by one say their number and sum, unless the text says them too. */
function timedBy(splits: readonly number[], { laps, time }: Readonly<Record<string, string>>): Partial<LogRow> {
  if (splits.length === 0) return {};
  const sum = splits.reduce((a, b) => a + b, 0);
  return {
    splits: splits.map((lap) => String(Number(lap.toFixed(3)))).join(' '),
    laps: laps ?? String(splits.length),
    time: time ?? `${Number(sum.toFixed(3))} s`,
  };
}

function splitsIn(text: string, decimal: Decimal): readonly number[] | string {
  const laps = text.split(/[\s;/]+/).filter((each) => each !== '');
  const read = laps.map((lap) => {
    const plain = withPoint(lap, decimal);
    const entry = 'text' in plain ? readEntry(plain.text, 's') : undefined;
    return entry?.ok ? entry.si : Number.NaN;
  });
  const strange = read.findIndex((lap) => !(lap > 0));
  return strange < 0
    ? read
    : `Times of single laps: “${laps[strange]}” is no time. Write each in seconds with a space between.`;
}

type Read = { readonly text: string; readonly si: number } | { readonly wrong: string };

function cellOf(text: string, target: Target, unit: string, { decimal, order, units }: FlightReading): Read {
  if (target.key === 'date') {
    if (order === undefined)
      return { wrong: `“${text}” could be meant in two ways. Choose whether day or month comes first.` };
    const day = readDay(text, order);
    return day === undefined
      ? { wrong: `“${text}” is no day. Write it as 2026-09-05 or 5.9.2026.` }
      : { text: day, si: 0 };
  }
  if (!target.dimension) return { text, si: 0 };
  const plain = withPoint(text, decimal);
  if ('wrong' in plain) return { wrong: `${plain.wrong}. Write it so, or choose the other sign.` };
  const read = readEntry(plain.text, unit, units);
  if (!read.ok) return { wrong: read.fault.message };
  const bare = /^[+\-−]?[\d.]+(e[+-]?\d+)?$/i.test(plain.text) && unit !== '';
  return { text: bare ? `${plain.text} ${unit}` : plain.text, si: read.si };
}
