import type { Cell, Sheet as DesignSheet, Document, Shown } from '../../engine/index';

/** What of a design is on the page: the pieces of one sheet with what they show of others, and the key figures beside them. */
export function shownOf({ figures }: Pick<Document, 'figures'>, { pieces }: DesignSheet): Shown {
  return {
    cells: pieces.map(({ id }) => id),
    paths: [...new Set([...figures, ...pieces.flatMap(borrowed)])].filter((path) => path !== ''),
  };
}

/** Numbers of other pieces that a piece shows beside its own. */
function borrowed(cell: Cell): readonly string[] {
  switch (cell.kind) {
    case 'chart':
      return [cell.across, cell.lines, ...cell.up];
    case 'what_helps':
    case 'tolerances':
      return [...cell.wanted, ...cell.rows.map(({ of }) => of)];
    case 'variants':
      return cell.wanted;
    case 'what_mends':
      return [cell.of, ...cell.wanted];
    case 'best_compromises':
      return [...cell.goals.map(({ of }) => of), ...cell.wanted, ...cell.axes.map(({ of }) => of)];
    case 'guess':
      return [cell.of];
    case 'weighing':
      return cell.parts === '' ? [] : [`${cell.parts}.x`, `${cell.parts}.x_sd`, `${cell.parts}.weighed_share`];
    case 'trial_series':
      return cell.axes.map(({ of }) => of);
    case 'fit':
      return cell.factors;
    default:
      return [];
  }
}
