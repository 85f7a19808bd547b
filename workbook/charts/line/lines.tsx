import type { JSX } from 'preact';
import { Curve, GhostCurve } from '../frame/curve';
import { End } from './end';
import type { LinePanel } from './layout';

/** The lines of one panel, the baseline's beneath them. */
export const Lines = ({ panel }: { panel: LinePanel }): JSX.Element => (
  <>
    {panel.ghosts.map((ghost, k) => (
      <GhostCurve key={k} points={ghost} />
    ))}
    {panel.lines.map(({ line, style, placed }) => (
      <Curve key={line.key} points={placed} style={style} steps={line.steps} />
    ))}
  </>
);

/** What the lines are called. */
export function LineNames({ panel: { ends, lines, box } }: { panel: LinePanel }): JSX.Element {
  const empty = lines.every(({ line }) => line.points.every((p) => Number.isNaN(p.y)));
  return (
    <>
      {ends.map((end) => (
        <End key={end.key} end={end} />
      ))}
      {empty && (
        <text x={(box.left + box.right) / 2} y={(box.top + box.bottom) / 2} text-anchor="middle">
          no answer here yet
        </text>
      )}
    </>
  );
}
