import type { JSX } from 'preact';
import { ink, type Point } from '../../drawing/index';
import { curvePath, stepPath } from './curve-path';
import type { LineStyle } from './palette';

const WIDTH = 1.8;

interface CurveProps {
  readonly points: readonly Point[];
  readonly style: LineStyle;
  /** Level between its points, upright half way. */
  readonly steps?: boolean | undefined;
}

/** One line of a family, told apart by colour and dash together. */
export function Curve({ points, style, steps = false }: CurveProps): JSX.Element {
  return (
    <path
      d={steps ? stepPath(points) : curvePath(points)}
      fill="none"
      stroke={style.line}
      stroke-width={WIDTH}
      stroke-dasharray={style.dash || undefined}
      stroke-linecap={style.dash === '' ? 'round' : 'butt'}
      stroke-linejoin="round"
    />
  );
}

/** The baseline's line: dotted, in grey, beneath the others. */
export function GhostCurve({ points }: { points: readonly Point[] }): JSX.Element {
  return (
    <path
      data-line="baseline"
      d={curvePath(points)}
      fill="none"
      stroke={ink('muted')}
      stroke-width={1.4}
      stroke-dasharray="0.1 3.6"
      stroke-linecap="round"
    />
  );
}
