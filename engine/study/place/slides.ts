import type { Variable } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { textAt } from '../../sheet/paths';
import type { NameInfo } from '../../terms/index';
import { differenceFromSI, fromSI, toSI, writeQuantity } from '../../units/index';
import type { Slide } from './study';

/** What a slide of a study is in a design. */
export type Slid =
  /** A variable that is there already. */
  | { readonly is: 'there'; readonly path: string; readonly title: string }
  /** A field whose formula stays: it is tried between these ends, and can't be dragged. */
  | { readonly is: 'tried'; readonly path: string; readonly title: string; readonly ends: readonly [string, string] }
  /** A number that becomes a variable. */
  | { readonly is: 'made'; readonly field: string; readonly before: string; readonly variable: Variable };

/** Undefined where the design has no number there. `blank`: the result that says what a blank field is; `name` is free for a new variable. */
export function slideIn(slide: Slide, field: string, blank: string, live: Live, name: string): Slid | undefined {
  const { document, names } = live.compiled;
  const info = names.find((each) => each.path === field && each.settable);
  if (!info) return undefined;
  const before = textAt(document, field) ?? '';
  const variable = names.find((each) => each.path === before.trim() && each.kind === 'variable');
  if (variable) return { is: 'there', path: variable.path, title: variable.title };
  const value = valueAtField(field, blank, live);
  if (Number.isNaN(value)) return undefined;
  const reading = live.compiled.read(field, before);
  // A blank field that takes its number from a piece reads a formula too.
  if (reading && reading.is !== 'constant') {
    return { is: 'tried', path: field, title: info.title, ends: endsOf(slide, value, info, live) };
  }
  const text = before.trim() === '' ? neat(value, info.unit) : inUnit(before, value, info);
  const [low, high] = endsOf(slide, value, info, live);
  return {
    is: 'made',
    field,
    before,
    variable: { name, title: slide.title, symbol: slide.symbol, unit: info.unit, text, low, high, step: '' },
  };
}

/** What is typed, or else what the block takes in its place. */
function valueAtField(field: string, blank: string, { compiled, state }: Live): number {
  const { program } = compiled;
  const typed = state.m[program.constants.get(field) ?? program.slotOf.get(field)!]!;
  return Number.isNaN(typed) ? (state.m[program.slotOf.get(blank) ?? -1] ?? Number.NaN) : typed;
}

function endsOf(slide: Slide, value: number, info: NameInfo, live: Live): readonly [string, string] {
  const read = (text: string, otherwise: number): number => {
    if (text === '') return otherwise;
    const reading = live.compiled.read(info.path, text);
    if (reading?.is !== 'constant') throw new RangeError(`${text} is no end for ${info.path}`);
    return reading.value;
  };
  const way = Math.max(Math.abs(value) * slide.share, read(slide.least, 0));
  const [least, most] = info.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const low = Math.max(value - way, least, read(slide.low, least));
  const high = Math.min(value + way, most, read(slide.high, most));
  return [neat(low, info.unit, way), neat(high, info.unit, way)];
}

/** A number without a unit is read in the field's own, which need not be the variable's. */
const inUnit = (text: string, value: number, { bare, unit }: NameInfo): string =>
  bare !== undefined && /^[\d\s.,+−-]+$/.test(text) ? writeQuantity(value, unit) : text;

/** A value that is good to look at: to a tenth of `way` in the unit that is shown, or to three digits where there is no way. */
function neat(si: number, unit: string, way = si / 100): string {
  const shown = fromSI(si, unit);
  const size = Math.abs(differenceFromSI(way, unit)) / 10;
  const step = size > 0 ? 10 ** Math.floor(Math.log10(size)) : 1;
  return writeQuantity(toSI(Math.round(shown / step) * step, unit), unit);
}
