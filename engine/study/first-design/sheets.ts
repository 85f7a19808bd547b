import type { Cell, Sheet } from '../../sheet/document';

const WEIGHTS: ReadonlySet<string> = new Set(['balance', 'ballast']);

/** The sheets of a first design: what is decided and what stops it, what it is made of, and what it weighs. */
export function sheetsOf(cells: readonly Cell[]): Sheet[] {
  const on = (title: string): Sheet['pieces'] => cells.filter((cell) => sheetFor(cell) === title);
  return ['Decide', 'Model', 'Weights'].map((title, k) => ({ id: `s${k + 1}`, title, pieces: on(title) }));
}

function sheetFor(cell: Cell): string {
  if (cell.kind === 'parts') return 'Weights';
  if (cell.kind === 'model') return WEIGHTS.has(cell.of) ? 'Weights' : 'Model';
  return cell.kind === 'drawing' ? 'Model' : 'Decide';
}
