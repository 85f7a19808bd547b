import type { CellKind } from '../../engine/index';

/** The small word beside a cell's balloon. */
export const kindWords: Readonly<Record<CellKind, string>> = {
  note: 'note',
  variables: 'variables',
  choice: 'choice',
  formula: 'formula',
  model: 'model',
  parts: 'parts',
  drawing: 'drawing',
  trial_series: 'trial series',
  tolerances: 'tolerances',
  what_helps: 'what helps most',
  chart: 'chart',
  table: 'table',
  check: 'check',
  log: 'log',
  fit: 'fit',
  variants: 'variants',
  what_mends: 'what mends it',
  best_compromises: 'best compromises',
  weighing: 'weighing',
  guess: 'guess',
};
