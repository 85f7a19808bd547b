import type { JSX } from 'preact';
import type { Point } from './geometry';
import { ink, lineKinds, MARK_RADIUS } from './ink';

const paper = ink('paper');

/** Centre of gravity: a circle in quarters, two of them filled. */
function QuarteredCircle({ at, radius }: { at: Point; radius: number }): JSX.Element {
  const { x, y } = at;
  const quarter = (sx: number, sy: number): string =>
    `M${x},${y}L${x + sx * radius},${y}A${radius},${radius},0,0,${sx * sy > 0 ? 1 : 0},${x},${y + sy * radius}Z`;
  return (
    <>
      <circle cx={x} cy={y} r={radius} fill={paper} stroke={ink('ink')} stroke-width={1.2} />
      <path d={quarter(1, -1) + quarter(-1, 1)} fill={ink('ink')} />
    </>
  );
}

/** The sign of each mark, about its point. An unknown mark is a small cross. */
export function MarkSign({ part, at }: { part: string; at: Point }): JSX.Element {
  const { x, y } = at;
  const thin = { stroke: ink('ink'), 'stroke-width': 1.2 };
  switch (part) {
    case 'cg':
      return <QuarteredCircle at={at} radius={MARK_RADIUS} />;
    case 'neutral_point':
      return (
        <>
          <path d={`M${x - 12},${y}H${x + 12}`} {...thin} />
          <path d={`M${x},${y - 5}L${x + 5},${y}L${x},${y + 5}L${x - 5},${y}Z`} fill={paper} {...thin} />
        </>
      );
    case 'guide':
      return <rect x={x - 3} y={y - 3} width={6} height={6} fill={paper} {...thin} />;
    case 'engine_station':
    case 'motor_station':
      return <path d={`M${x - 6},${y}H${x + 6}M${x},${y - 4}V${y + 4}`} fill="none" {...thin} />;
    default:
      return (
        <path d={`M${x - 4},${y - 4}L${x + 4},${y + 4}M${x - 4},${y + 4}L${x + 4},${y - 4}`} fill="none" {...thin} />
      );
  }
}

/** Where a mark stood in the baseline. */
export function GhostSign({ at }: { at: Point }): JSX.Element {
  return (
    <circle
      cx={at.x}
      cy={at.y}
      r={MARK_RADIUS - 1.5}
      fill="none"
      stroke={ink('muted')}
      stroke-width={lineKinds.ghost.width}
      stroke-dasharray="2 1.5"
    />
  );
}
