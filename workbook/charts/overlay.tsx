import type { JSX } from 'preact';
import { ink, LABEL_SIZE, lineKinds } from '../drawing/index';
import { Curve, GhostCurve } from './curve';
import { type EndLabel, endLineHeight } from './end-labels';
import { type ChartLayout, type DrawnPanel, TITLE_LINE } from './layout';
import { BASELINE_RADIUS, type DrawnSpot, NOW_RADIUS } from './spots';
import { WORD_LINE, type ZoneWords } from './zone-words';

const round = (v: number): number => Math.round(v * 100) / 100;

/** Paper around words that stand over lines or hatching. */
const halo = {
  stroke: ink('paper'),
  'stroke-width': 3.5,
  'stroke-linejoin': 'round',
  'paint-order': 'stroke',
} as const;

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
  const empty = panel.lines.every((l) => l.points.every((p) => Number.isNaN(p.y)));
  return (
    <g data-panel={panel.panel.path}>
      <text y={panel.titleTop + LABEL_SIZE + 1}>
        {panel.titleLines.map((line, k) => (
          <tspan key={line} x={0} dy={k === 0 ? 0 : TITLE_LINE}>
            {line}
          </tspan>
        ))}
      </text>
      {panel.ghost.length > 0 && <GhostCurve points={panel.ghost} />}
      {panel.lines.map(({ line, style, placed }) => (
        <Curve key={line.key} points={placed} style={style} />
      ))}
      {panel.zones.map(({ zone, words }) => words && <Words key={`${zone.side} ${zone.limit}`} words={words} />)}
      {panel.ends.map((end) => (
        <End key={end.key} end={end} />
      ))}
      {panel.spots.map((spot) => spot.kind === 'baseline' && <Baseline key={spot.kind} spot={spot} />)}
      {panel.spots.map((spot) => spot.kind === 'now' && <Now key={spot.kind} spot={spot} />)}
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

function Words({ words }: { words: ZoneWords }): JSX.Element {
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

function End({ end }: { end: EndLabel }): JSX.Element {
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

function Now({ spot }: { spot: DrawnSpot }): JSX.Element {
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

function Baseline({ spot }: { spot: DrawnSpot }): JSX.Element {
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
