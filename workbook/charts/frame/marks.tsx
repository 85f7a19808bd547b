import type { JSX } from 'preact';
import { ink, LABEL_SIZE, type Point } from '../../drawing/index';
import { signsPath } from './signs';
import { BASELINE_RADIUS, type DrawnSpot, NOW_RADIUS } from './spots';
import { WORD_LINE, type ZoneWords } from './zone-words';

export const round = (v: number): number => Math.round(v * 100) / 100;

/** Paper around words that stand over lines or hatching. */
export const halo = {
  stroke: ink('paper'),
  'stroke-width': 3.5,
  'stroke-linejoin': 'round',
  'paint-order': 'stroke',
} as const;

/** The reason of a limit in its zone. */
export function Words({ words }: { words: ZoneWords }): JSX.Element {
  return (
    <text fill={ink('limit')} {...halo}>
      {words.lines.map((line, k) => (
        <tspan key={line} x={round(words.box.left + 2)} y={round(words.box.top + k * WORD_LINE + LABEL_SIZE)}>
          {line}
        </tspan>
      ))}
    </text>
  );
}

function SpotLabel({ spot, bold }: { spot: DrawnSpot; bold: boolean }): JSX.Element | null {
  if (!spot.label) return null;
  const { box, leader } = spot.label;
  return (
    <>
      {leader && (
        <line x1={leader.x0} y1={leader.y0} x2={leader.x1} y2={leader.y1} stroke={ink('muted')} stroke-width={0.9} />
      )}
      <text
        x={round(box.left + 2)}
        y={round(box.top + LABEL_SIZE)}
        font-weight={bold ? 700 : undefined}
        fill={bold ? ink('ink') : ink('muted')}
        {...halo}
      >
        {spot.text}
      </text>
    </>
  );
}

/** The present design: a ringed dot with its value. */
export function Now({ spot }: { spot: DrawnSpot }): JSX.Element {
  const at = { cx: round(spot.at.x), cy: round(spot.at.y) };
  return (
    <g>
      <g data-mark="now">
        <circle {...at} r={NOW_RADIUS} fill={ink('paper')} stroke={ink('ink')} stroke-width={1.4} />
        <circle {...at} r={1.8} fill={ink('ink')} />
      </g>
      <SpotLabel spot={spot} bold />
    </g>
  );
}

/** The baseline: an open dot. */
export function Baseline({ spot }: { spot: DrawnSpot }): JSX.Element {
  return (
    <g>
      <circle
        data-mark="baseline"
        cx={round(spot.at.x)}
        cy={round(spot.at.y)}
        r={BASELINE_RADIUS}
        fill={ink('paper')}
        stroke={ink('muted')}
        stroke-width={1.2}
      />
      <SpotLabel spot={spot} bold={false} />
    </g>
  );
}

/** Sign of a variant: an open square, triangle or diamond, so that each is told apart without colour. */
export function VariantSign({ at, order }: { at: Point; order: number }): JSX.Element {
  return (
    <path
      data-mark="variant"
      d={signsPath([at], 1 + order)}
      fill={ink('paper')}
      stroke={ink('ink')}
      stroke-width={1.2}
    />
  );
}

/** A variant with its value. */
export function VariantMark({ spot }: { spot: DrawnSpot }): JSX.Element {
  return (
    <g>
      <VariantSign at={spot.at} order={spot.order ?? 0} />
      <SpotLabel spot={spot} bold={false} />
    </g>
  );
}
