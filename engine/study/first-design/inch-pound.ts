import type { Cell, Variable } from '../../sheet/document';
import { inUnitsOf } from '../../units/index';

/** Digits of a text that is computed with, and of one that is read. */
const [COMPUTED, READ] = [5, 2];

/** A number of a formula with what stands behind it. */
const QUANTITY = /-?[0-9.]+ [^\s()]+/g;

/** The texts of a design that is begun in inch-pound units: all that the program wrote is in them, what was typed (`kept`) stays. */
export function inInchPound(cells: readonly Cell[], kept: ReadonlySet<string>): Cell[] {
  const computed = (text: string): string =>
    kept.has(text)
      ? text
      : text.replace(QUANTITY, (one) => inUnitsOf(one, 'inch_pound', COMPUTED).replaceAll('\u00a0', ' '));
  const each = (fields: Readonly<Record<string, string>>): Record<string, string> =>
    Object.fromEntries(Object.entries(fields).map(([name, text]) => [name, computed(text)]));
  const variable = (row: Variable): Variable => ({ ...row, text: computed(row.text) });
  return cells.map((cell): Cell => {
    switch (cell.kind) {
      case 'note':
        return { ...cell, text: around(cell.text, kept) };
      case 'variables':
        return { ...cell, rows: cell.rows.map(variable) };
      case 'formula':
        return { ...cell, lines: cell.lines.map((line) => ({ ...line, text: computed(line.text) })) };
      case 'model':
        return { ...cell, fields: each(cell.fields) };
      case 'parts':
        return { ...cell, rows: cell.rows.map((part) => ({ ...part, fields: each(part.fields) })) };
      case 'choice':
        return {
          ...cell,
          options: cell.options.map((option) => ({
            ...option,
            ...(option.layers && {
              layers: option.layers.map((layer) => ({ ...layer, text: computed(layer.text) })),
            }),
          })),
        };
      default:
        return cell;
    }
  });
}

/** A text that is read, but for what was typed in it. */
function around(text: string, kept: ReadonlySet<string>): string {
  const [typed, ...others] = [...kept].filter((each) => each !== '' && text.includes(each));
  if (typed === undefined) return inUnitsOf(text, 'inch_pound', READ);
  const rest = new Set(others);
  return text
    .split(typed)
    .map((part) => around(part, rest))
    .join(typed);
}
