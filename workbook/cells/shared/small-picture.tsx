import type { ComponentChildren } from 'preact';
import { ink, SMALL_SIZE } from '../../drawing/index';
import { fontFamily } from '../../theme/tokens';

/** Where a small picture stands, in pixels, and the lines across it with the value that each stands for, SI. */
interface Frame {
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
}

/** A picture over lines with their values at the left; `about`: what it is, for those who don't see it. */
export function SmallPicture(props: {
  width: number;
  frame: Frame;
  about: string;
  written(value: number): string;
  children: ComponentChildren;
}) {
  const { width, frame, about, written, children } = props;
  const { height, left, right, ticks } = frame;
  return (
    <svg
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={about}
      font-family={fontFamily}
      font-size={SMALL_SIZE}
    >
      {ticks.map(({ value, y }) => (
        <g key={y}>
          <line stroke={ink('hairline')} x1={left} x2={right} y1={y} y2={y} />
          <text x={left - 6} y={y + 4} text-anchor="end" fill={ink('muted')}>
            {written(value)}
          </text>
        </g>
      ))}
      {children}
    </svg>
  );
}
