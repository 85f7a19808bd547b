import type { CellKind } from '../../engine/index';

/** The small word beside a cell's balloon. */
export const kindWords: Readonly<Record<CellKind, string>> = {
  note: 'note',
  variables: 'variables',
  choice: 'choice',
  formula: 'formula',
  block: 'block',
  parts: 'parts',
  drawing: 'drawing',
  sweep: 'sweep',
  spread: 'spread',
  levers: 'levers',
  chart: 'chart',
  table: 'table',
  check: 'check',
  log: 'log',
  fit: 'fit',
};
