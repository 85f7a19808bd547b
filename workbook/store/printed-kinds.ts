import type { CellKind } from '../../engine/index';

/** What of a sheet can be left out on paper, with its words. */
export const printedKinds = {
  standing: 'stops, key figures and drawing before the first sheet',
  notes: 'notes',
  model: 'what is set, and the model',
  weights: 'weights',
  studies: 'charts, tables and studies',
  checks: 'checks, logs and fits',
} as const;
export type PrintedKind = keyof typeof printedKinds;

/** Which of them a piece is. */
export const printedAs: Readonly<Record<CellKind, PrintedKind>> = {
  note: 'notes',
  variables: 'model',
  choice: 'model',
  formula: 'model',
  model: 'model',
  parts: 'weights',
  weighing: 'weights',
  drawing: 'studies',
  trial_series: 'studies',
  tolerances: 'studies',
  what_helps: 'studies',
  chart: 'studies',
  guess: 'studies',
  table: 'studies',
  variants: 'studies',
  what_mends: 'studies',
  best_compromises: 'studies',
  check: 'checks',
  log: 'checks',
  fit: 'checks',
};
