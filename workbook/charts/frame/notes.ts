import type { Spot } from './family';
import type { DrawnPanel } from './panels';

/** Results that the chart asks for and its source was not asked for. */
export const unaskedNotes = (
  panels: readonly { readonly info: { readonly title: string }; readonly column?: unknown }[],
): string[] =>
  panels
    .filter(({ column }) => !column)
    .map(({ info }) => `${info.title} is not among the results asked for. Add it where this chart is drawn from.`);

/** Axes that a chart does not show. */
export const heldNote = (held: readonly string[]): string => (held.length > 0 ? `At ${held.join(', ')}.` : '');

/** Said where a design that has an answer has no place in any plot. */
export const outsideNote = (now: readonly (Spot | undefined)[], panels: readonly DrawnPanel[]): string =>
  now.some((spot) => spot !== undefined) && panels.every(({ spots }) => spots.every(({ kind }) => kind !== 'now'))
    ? 'The present design lies outside this picture.'
    : '';
