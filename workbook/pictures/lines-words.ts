import { bound, formatNumber } from '../../engine/index';
import type { TableData } from '../charts/index';
import { columnOf, type LinesNumbers, type LinesShown, shownValue } from './lines-layout';

/** A value of the trace as text with its unit. */
export function said({ trace }: LinesShown, name: string, value: number): string {
  const unit = trace.columns.find((each) => each.name === name)?.unit ?? '';
  const number = formatNumber(shownValue(trace, name, value));
  return unit === '' ? number : bound(number, unit);
}

/** What to see, from the numbers. */
export function linesCaption(shown: LinesShown): string[] {
  const { trace, clockwise, now, baseline } = shown;
  const tension = columnOf(trace, trace.present, 'tension');
  const beside = (value: number, name: string, word: string, other: string): string =>
    `${said(shown, name, Math.abs(value))} ${value < 0 ? other : word}`;
  const bow = (of: LinesNumbers): string =>
    `${beside(of.bow_back, 'back', 'back', 'ahead')} and ${beside(of.bow_down, 'down', 'down', 'up')}`;
  const sentences = [
    `Between handle and guide the lines bow ${bow(now)}.`,
    `They trail by ${said(shown, 'trail', now.line_trail)} at the guide; the arm points ${said(shown, 'trail', now.handle_trail)} behind the model.`,
    `The tension of all lines grows from ${said(shown, 'tension', tension[tension.length - 1]!)} at the guide to ${said(shown, 'tension', now.pull_at_handle)} at the handle.`,
    `Flight runs ${clockwise ? 'down' : 'up'} the plan, ${clockwise ? 'clockwise' : 'counter-clockwise'} seen from above.`,
  ];
  if (trace.baseline && baseline) sentences.push(`Dotted: baseline, ${bow(baseline)}.`);
  return sentences;
}

/** Every number of the trace as a table. */
export function linesTable(shown: LinesShown): TableData {
  const { trace } = shown;
  const number = (k: number, value: number): string => formatNumber(shownValue(trace, trace.columns[k]!.name, value));
  return {
    head: [trace.columns.map(({ title, unit }) => ({ text: unit === '' ? title : `${title}, ${unit}` }))],
    rows: Array.from(trace.present[0] ?? [], (first, row) => ({
      head: number(0, first),
      cells: trace.present.slice(1).map((column, k) => number(k + 1, column[row]!)),
    })),
  };
}
