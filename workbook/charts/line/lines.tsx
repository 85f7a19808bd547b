import type { JSX } from 'preact';
import { LABEL_SIZE, overlaps, textWidth } from '../../drawing/index';
import { Curve, GhostCurve } from '../frame/curve';
import { round } from '../frame/marks';
import { End } from './end';
import type { LinePanel } from './layout';

/** The lines of one panel, the baseline's beneath them. */
export const Lines = ({ panel }: { panel: LinePanel }): JSX.Element => (
  <>
    {panel.ghosts.map(({ points, order }, k) => (
      <GhostCurve key={k} points={points} {...(order === undefined ? {} : { variant: order })} />
    ))}
    {panel.lines.map(({ line, style, placed }) => (
      <Curve key={line.key} points={placed} style={style} steps={line.steps} />
    ))}
  </>
);

/** What an empty panel says. */
const EMPTY = 'no answer here yet';
/** Where that may stand, as shares of the height; the first that covers nothing. */
const ROWS = [0.5, 0.75, 0.25, 0.9, 0.1] as const;

function Empty({ panel: { box, spots, zones } }: { panel: LinePanel }): JSX.Element {
  const x = (box.left + box.right) / 2;
  const half = textWidth(EMPTY, LABEL_SIZE) / 2;
  const taken = [...spots.flatMap(({ label }) => label?.box ?? []), ...zones.flatMap(({ words }) => words?.box ?? [])];
  const placed = ROWS.map((share) => {
    const bottom = box.top + share * (box.bottom - box.top) + LABEL_SIZE / 2;
    return { left: x - half, right: x + half, top: bottom - LABEL_SIZE, bottom };
  });
  const free = placed.find((each) => !taken.some((other) => overlaps(each, other))) ?? placed[0]!;
  return (
    <text x={round(x)} y={round(free.bottom)} text-anchor="middle">
      {EMPTY}
    </text>
  );
}

/** What the lines are called. */
export function LineNames({ panel }: { panel: LinePanel }): JSX.Element {
  const empty = panel.lines.every(({ line }) => line.points.every((p) => Number.isNaN(p.y)));
  return (
    <>
      {panel.ends.map((end) => (
        <End key={end.key} end={end} />
      ))}
      {empty && <Empty panel={panel} />}
    </>
  );
}
