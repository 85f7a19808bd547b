import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { ChartFigure, Curve, GhostCurve, halo, lineStyle, type ReadSeries, round } from '../charts/index';
import { ink, LABEL_SIZE, lineKinds, MarkSign, type Point, useWidth } from '../drawing/index';
import { columnOf, type LinesLayout, type LinesShown, type LinesView, layOutLines } from './lines-layout';
import { linesCaption, linesTable, said } from './lines-words';

export interface LinesFigureProps extends LinesShown {
  readonly title: string;
  /** Fixed width in pixels; missing: as wide as the place it stands in. */
  readonly width?: number;
}

const PLAIN = 560;

/** The lines from handle to guide in plan and side view. */
export function LinesFigure(props: LinesFigureProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN);
  const before = useRef<LinesLayout | undefined>(undefined);
  const layout = layOutLines(props, props.width ?? measured, before.current);
  before.current = layout;
  return (
    <div ref={host}>
      <ChartFigure
        title={props.title}
        sentences={linesCaption(props)}
        width={layout.width}
        height={layout.height}
        start={layout.plan.bow.at}
        series={() => [readings(props, layout.plan), readings(props, layout.side)]}
        table={() => linesTable(props)}
      >
        <View view={layout.plan} shown={props} />
        <View view={layout.side} shown={props} />
      </ChartFigure>
    </div>
  );
}

function View({ view, shown }: { view: LinesView; shown: LinesShown }): JSX.Element {
  const { axis, handle, guide, cg, bow, kind } = view;
  const { trace, now } = shown;
  const [trail, arm] = [now.line_trail, now.handle_trail].map((angle) => said(shown, 'trail', angle));
  const height = columnOf(trace, trace.present, 'height').at(-1)!;
  const below = bow.at.y >= bow.from.y;
  return (
    <g data-view={kind}>
      <text fill={ink('muted')}>
        {view.heading.map((line, k) => (
          <tspan key={line} x={0} y={view.top + LABEL_SIZE + 1 + k * (LABEL_SIZE + 3)}>
            {line}
          </tspan>
        ))}
      </text>
      <Stroke from={axis} to={guide} kind="centre" />
      <Stroke from={handle} to={guide} kind="hidden" />
      {kind === 'side' && (
        <Stroke from={{ x: axis.x, y: axis.y + 14 }} to={{ x: axis.x, y: axis.y - 14 }} kind="centre" />
      )}
      {view.baseline.length > 0 && <GhostCurve points={view.baseline} />}
      <Stroke from={axis} to={handle} kind="outline" />
      <Stroke from={bow.from} to={bow.at} kind="thin" />
      <g data-line={kind}>
        <Curve points={view.line} style={lineStyle(0)} />
      </g>
      <circle cx={round(axis.x)} cy={round(axis.y)} r={3} fill={ink('paper')} stroke={ink('ink')} stroke-width={1.2} />
      <circle cx={round(handle.x)} cy={round(handle.y)} r={2.5} fill={ink('ink')} />
      <MarkSign part="guide" at={rounded(guide)} />
      <MarkSign part="cg" at={rounded(cg)} />
      {kind === 'plan' && <FlightArrow cg={cg} way={view.guideSide} />}
      <Words
        at={{ x: Math.max(0, axis.x - 6), y: axis.y }}
        side={view.pilotSide}
        lines={kind === 'plan' ? ['pilot, handle', `arm ${arm} behind`] : ['pilot, handle']}
        anchor="start"
      />
      <Words
        at={{ x: guide.x - 4, y: guide.y }}
        side={view.guideSide}
        lines={[
          'guide',
          kind === 'plan'
            ? `trail ${trail}`
            : `${said(shown, 'height', Math.abs(height))} ${height < 0 ? 'down' : 'up'}`,
        ]}
        anchor="end"
      />
      <text x={round(cg.x + 10)} y={round(cg.y + LABEL_SIZE * 0.36)} {...halo}>
        CG
      </text>
      <text
        data-bow={kind}
        x={round(bow.at.x)}
        y={round(bow.at.y + (below ? LABEL_SIZE + 5 : -6))}
        text-anchor="middle"
        font-weight={700}
        {...halo}
      >
        {kind === 'plan' ? said(shown, 'back', Math.abs(now.bow_back)) : said(shown, 'down', Math.abs(now.bow_down))}
      </text>
    </g>
  );
}

/** Which way the model flies. */
function FlightArrow({ cg, way }: { cg: Point; way: -1 | 1 }): JSX.Element {
  const [x, from, to] = [round(cg.x), round(cg.y + way * 9), round(cg.y + way * 27)];
  return (
    <path
      d={`M${x},${from}V${to}M${x - 4},${round(to - way * 6)}L${x},${to}L${x + 4},${round(to - way * 6)}`}
      fill="none"
      stroke={ink('ink')}
      stroke-width={1.2}
    />
  );
}

const rounded = ({ x, y }: Point): Point => ({ x: round(x), y: round(y) });

function Stroke({ from, to, kind }: { from: Point; to: Point; kind: keyof typeof lineKinds }): JSX.Element {
  return (
    <line
      x1={round(from.x)}
      y1={round(from.y)}
      x2={round(to.x)}
      y2={round(to.y)}
      stroke={ink(kind === 'outline' ? 'ink' : 'muted')}
      stroke-width={lineKinds[kind].width}
      stroke-dasharray={lineKinds[kind].dash || undefined}
    />
  );
}

/** Words on one side of a point, the first of them furthest from it where they stand above. */
function Words(of: { at: Point; side: -1 | 1; lines: readonly string[]; anchor: 'start' | 'end' }): JSX.Element {
  const step = LABEL_SIZE + 3;
  const first = of.side < 0 ? of.at.y - 10 - (of.lines.length - 1) * step : of.at.y + 10 + LABEL_SIZE;
  return (
    <text text-anchor={of.anchor} {...halo}>
      {of.lines.map((line, k) => (
        <tspan key={line} x={round(of.at.x)} y={round(first + k * step)}>
          {line}
        </tspan>
      ))}
    </text>
  );
}

function readings(shown: LinesShown, view: LinesView): ReadSeries {
  const { trace } = shown;
  const names =
    view.kind === 'plan'
      ? ['distance', 'behind', 'back', 'trail', 'tension']
      : ['distance', 'height', 'down', 'slope', 'tension'];
  const columns = names.map((name) => {
    const index = trace.columns.findIndex((each) => each.name === name);
    return { name, title: trace.columns[index]?.title ?? name, values: trace.present[index]! };
  });
  return {
    name: view.kind === 'plan' ? 'plan' : 'side view',
    points: view.line.map((at, k) => ({
      at,
      lines: columns.map(({ name, title, values }) => `${title} ${said(shown, name, values[k]!)}`),
    })),
  };
}
