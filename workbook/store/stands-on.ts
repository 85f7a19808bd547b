import type { Sheet as DesignSheet } from '../../engine/index';

/** Whether a sheet has something of a trial series or of what runs along something: the piece itself, or a chart or table of it. */
export function standsOn({ pieces }: DesignSheet, path: string): boolean {
  const owner = path.split('.', 1)[0];
  return pieces.some(
    (piece) =>
      piece.name === owner ||
      ((piece.kind === 'chart' || piece.kind === 'table') && piece.series === path) ||
      (piece.kind === 'chart' && piece.of === path),
  );
}
