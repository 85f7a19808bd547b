import type { JSX } from 'preact';
import { LABEL_SIZE } from '../../drawing/index';
import { type ChartLayout, type DrawnPanel, TITLE_LINE } from '../line/layout';
import { Curve, GhostCurve } from './curve';
import { Baseline, End, Now, round, Words } from './marks';
import { keyOf } from './spots';

/** Everything above the frame: lines, titles, names, reasons, and the marks that move with the hand. */
export function Overlay({ chart }: { chart: ChartLayout }): JSX.Element {
  return (
    <>
      {chart.panels.map((panel) => (
        <PanelOverlay key={panel.panel.path} panel={panel} />
      ))}
      <text x={round(chart.xTitle.at.x)} y={round(chart.xTitle.at.y)} text-anchor="middle">
        {chart.xTitle.text}
      </text>
    </>
  );
}

function PanelOverlay({ panel }: { panel: DrawnPanel }): JSX.Element {
  const empty = panel.lines.every((l) => l.line.points.every((p) => Number.isNaN(p.y)));
  return (
    <g data-panel={panel.panel.path}>
      <text y={panel.titleTop + LABEL_SIZE + 1}>
        {panel.titleLines.map((line, k) => (
          <tspan key={line} x={0} dy={k === 0 ? 0 : TITLE_LINE}>
            {line}
          </tspan>
        ))}
      </text>
      {panel.ghosts.map((ghost, k) => (
        <GhostCurve key={k} points={ghost} />
      ))}
      {panel.lines.map(({ line, style, placed }) => (
        <Curve key={line.key} points={placed} style={style} />
      ))}
      {panel.zones.map(({ zone, words }) => words && <Words key={`${zone.side} ${zone.limit}`} words={words} />)}
      {panel.ends.map((end) => (
        <End key={end.key} end={end} />
      ))}
      {panel.spots.map((spot) => spot.kind === 'baseline' && <Baseline key={keyOf(spot)} spot={spot} />)}
      {panel.spots.map((spot) => spot.kind === 'now' && <Now key={keyOf(spot)} spot={spot} />)}
      {empty && (
        <text
          x={(panel.box.left + panel.box.right) / 2}
          y={(panel.box.top + panel.box.bottom) / 2}
          text-anchor="middle"
        >
          no answer here yet
        </text>
      )}
    </g>
  );
}
