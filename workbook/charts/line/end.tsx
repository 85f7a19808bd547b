import type { JSX } from 'preact';
import { LABEL_SIZE, lineKinds } from '../../drawing/index';
import { round } from '../frame/marks';
import { type EndLabel, endLineHeight } from './end-labels';

/** A line's name at its end. */
export function End({ end }: { end: EndLabel }): JSX.Element {
  const first = end.at.y - ((end.lines.length - 1) * endLineHeight) / 2 + LABEL_SIZE * 0.36;
  return (
    <g fill={end.colour}>
      {end.leader && (
        <line
          x1={round(end.leader.x0)}
          y1={round(end.leader.y0)}
          x2={round(end.leader.x1)}
          y2={round(end.leader.y1)}
          stroke={end.colour}
          stroke-width={lineKinds.thin.width}
        />
      )}
      <text>
        {end.lines.map((line, k) => (
          <tspan key={line} x={round(end.at.x)} y={round(first + k * endLineHeight)}>
            {line}
          </tspan>
        ))}
      </text>
    </g>
  );
}
