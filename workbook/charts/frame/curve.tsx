import type { JSX } from 'preact';
import { ink, type Point } from '../../drawing/index';
import { curvePath, stepPath } from './curve-path';
import { VariantSign } from './marks';
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

/** Dots and dashes of the variants' lines, told apart without colour. */
const VARIANT_DASHES = ['5 2.5 0.1 2.5', '0.1 2.4 0.1 5', '8 3'] as const;

/** A straight line of a variant across what is drawn of the present design, with its sign at its end. */
export function VariantLine({ from, to, order }: { from: Point; to: Point; order: number }): JSX.Element {
  return (
    <g>
      <GhostCurve points={[from, to]} variant={order} />
      <VariantSign at={to} order={order} />
    </g>
  );
}

/** The line of another design, in grey beneath the others: the baseline's dotted, each variant's by its own dashes. */
export function GhostCurve({ points, variant }: { points: readonly Point[]; variant?: number }): JSX.Element {
  return (
    <path
      data-line={variant === undefined ? 'baseline' : 'variant'}
      d={curvePath(points)}
      fill="none"
      stroke={ink('muted')}
      stroke-width={1.4}
      stroke-dasharray={variant === undefined ? '0.1 3.6' : VARIANT_DASHES[variant % VARIANT_DASHES.length]}
      stroke-linecap="round"
    />
  );
}
