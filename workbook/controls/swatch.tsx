import { useId } from 'preact/hooks';
import type { ChoiceOption } from '../../engine/index';

type Pattern = ChoiceOption['pattern'];

/** Strokes of each material's line pattern, on a tile of 10 × 18. */
const strokes: Record<Pattern, string> = {
  grain: 'M0 4.5 H10 M0 9 H6 M8 9 H10 M0 13.5 H10',
  ply: 'M0 3 H10 M0 6 H10 M0 9 H10 M0 12 H10 M0 15 H10',
  faced: 'M0 3 H10 M0 15 H10 M0 4.2 H10 M0 13.8 H10 M0 9 H5',
  foam: '',
  weave: 'M0 3 L10 15 M10 3 L0 15 M-3 9 L2 15 M8 3 L13 9',
  plain: '',
};
const dots = [
  [2, 4],
  [7, 7],
  [3, 11],
  [8, 14.5],
] as const;

/** A material swatch: the line pattern says grain, plies or foam without any colour. */
export function Swatch({ pattern }: { pattern: Pattern }) {
  const id = useId();
  return (
    <svg class="swatch" viewBox="0 0 30 18" width="30" height="18" aria-hidden="true" focusable="false">
      <defs>
        <pattern id={`${id}-fill`} width="10" height="18" patternUnits="userSpaceOnUse">
          <path d={strokes[pattern]} />
          {pattern === 'foam' && dots.map(([x, y]) => <circle key={y} cx={x} cy={y} r="0.9" />)}
        </pattern>
      </defs>
      <rect x="0.75" y="0.75" width="28.5" height="16.5" fill={`url(#${id}-fill)`} />
    </svg>
  );
}
