import { type DesignTold, formatQuantity, type KeyFigure } from '../../../engine/index';

/** A key figure of two designs, as it is read. */
export interface ComparedRow {
  readonly of: string;
  readonly title: string;
  readonly first: string;
  readonly second: string;
  /** Second less first; '' where either has no answer. */
  readonly difference: string;
}

/** Key figures of two designs side by side, both in the units of the first. */
export function comparedRows(first: DesignTold, second: DesignTold): readonly ComparedRow[] {
  const more = second.figures.filter(({ of }) => !first.figures.some((each) => each.of === of));
  return [...first.figures, ...more].map((figure) => {
    const [a, b] = [first, second].map(
      (told) => told.figures.find(({ of }) => of === figure.of)?.value ?? Number.NaN,
    ) as [number, number];
    return {
      of: figure.of,
      title: figure.suffix === '' ? figure.title : `${figure.title}, ${figure.suffix}`,
      first: formatQuantity(a, figure.unit, { ways: figure.ways }),
      second: formatQuantity(b, figure.unit, { ways: figure.ways }),
      difference: differenceText(figure, a, b),
    };
  });
}

/** With as many decimals as the figure shows; nothing that shows is no difference. */
function differenceText(figure: KeyFigure, a: number, b: number): string {
  if (Number.isNaN(a) || Number.isNaN(b)) return '';
  const { unit } = figure;
  const decimals = Math.max(...[a, b].map((value) => decimalsOf(formatQuantity(value, unit))));
  const text = formatQuantity(b - a, unit, { difference: true, sign: true, decimals });
  return /[1-9]/.test(text.replace(/[a-z].*$/i, '')) ? text : '0';
}

const decimalsOf = (text: string): number => /\.(\d+)/.exec(text)?.[1]?.length ?? 0;
