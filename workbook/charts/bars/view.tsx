import type { JSX } from 'preact';
import { ink, LABEL_SIZE } from '../../drawing/index';
import { VariantLine } from '../frame/curve';
import { type ChartKind, chartOf } from '../frame/kind';
import { halo, round } from '../frame/marks';
import type { ChartProps, PartsChartProps, SweepChartProps } from '../frame/props';
import { NOW_RADIUS } from '../frame/spots';
import { type BarData, barsOfParts, barsOfSweep } from './bars';
import { type BarLayout, type BarPanelDrawn, type DrawnGroup, FIGURE_GAP, layOutBars } from './layout';
import { barAbout, barReadings, barSentences, barTable } from './words';

type Props = SweepChartProps | PartsChartProps;

/** A chart that is drawn as bars. */
export type BarKind<P extends ChartProps, D extends BarData> = ChartKind<P, D, BarPanelDrawn, BarLayout>;

/** What all of them have in common. */
export const barDrawing = {
  layOut: layOutBars,
  Under: Bars,
  about: barAbout,
  readings: barReadings,
  start: presentEnd,
};

const kind: BarKind<Props, BarData> = {
  ...barDrawing,
  read: (props) => ('parts' in props ? barsOfParts(props) : barsOfSweep(props)),
  sentences: barSentences,
  table: ({ data }) => barTable(data),
};

/** Bars from zero: of a result over an axis, or of every part. */
export const BarChart = chartOf(kind);

function Bars({ panel }: { panel: BarPanelDrawn }): JSX.Element {
  const zero = round(panel.x(0));
  const line = <line x1={zero} x2={zero} y1={panel.box.top} y2={panel.box.bottom} stroke={ink('ink')} />;
  // Names that stand over their bars cross the line of nothing, so it lies under them.
  const under = panel.groups.some((group) => group.above);
  return (
    <>
      {under && line}
      {panel.groups.map((group) => (
        <Group key={group.key} group={group} zero={zero} edge={panel.box.left} />
      ))}
      {!under && line}
    </>
  );
}

function Group({ group, zero, edge }: { group: DrawnGroup; zero: number; edge: number }): JSX.Element {
  const middle = (group.top + group.bottom) / 2;
  const first = group.above
    ? group.top + LABEL_SIZE
    : middle - ((group.name.length - 1) * (LABEL_SIZE + 2)) / 2 + LABEL_SIZE * 0.36;
  return (
    <g>
      <text text-anchor={group.above ? undefined : 'end'} {...(group.above ? halo : {})}>
        {group.name.map((line, k) => (
          <tspan key={line} x={round(group.above ? edge : edge - 6)} y={round(first + k * (LABEL_SIZE + 2))}>
            {line}
          </tspan>
        ))}
      </text>
      {group.bars.map(({ key, box, end, leftward, middle, style, text, present, whisker }) => (
        <g key={key}>
          <rect
            data-bar={key}
            x={round(box.left)}
            y={round(box.top)}
            width={round(box.right - box.left)}
            height={round(box.bottom - box.top)}
            fill={style.line}
            fill-opacity={0.22}
            stroke={style.line}
            stroke-width={1.4}
            stroke-dasharray={style.dash || undefined}
          />
          {whisker && (
            <path
              data-mark="error"
              d={`M${round(whisker[0])},${round(middle)}H${round(whisker[1])}M${round(whisker[0])},${round(middle - 3)}v6M${round(whisker[1])},${round(middle - 3)}v6`}
              stroke={ink('ink')}
              fill="none"
            />
          )}
          <text
            x={round(leftward ? end - FIGURE_GAP : Math.max(end, zero, whisker?.[1] ?? end) + FIGURE_GAP)}
            y={round(middle + LABEL_SIZE * 0.36)}
            text-anchor={leftward ? 'end' : undefined}
            fill={style.text}
            font-weight={present ? 700 : undefined}
            {...halo}
          >
            {text}
          </text>
          {present && (
            <g data-mark="now">
              <circle
                cx={round(end)}
                cy={round(middle)}
                r={NOW_RADIUS}
                fill={ink('paper')}
                stroke={ink('ink')}
                stroke-width={1.4}
              />
              <circle cx={round(end)} cy={round(middle)} r={1.8} fill={ink('ink')} />
            </g>
          )}
        </g>
      ))}
      {group.bars.length === 0 && (
        <text x={round(zero + FIGURE_GAP)} y={round(middle + LABEL_SIZE * 0.36)} fill={ink('muted')}>
          no answer
        </text>
      )}
      {group.others.map(({ order, at }) => (
        <VariantLine key={order} from={{ x: at, y: group.bottom + 2 }} to={{ x: at, y: group.top - 2 }} order={order} />
      ))}
      {group.baseline !== undefined && (
        <line
          data-line="baseline"
          x1={round(group.baseline)}
          x2={round(group.baseline)}
          y1={round(group.top - 2)}
          y2={round(group.bottom + 2)}
          stroke={ink('muted')}
          stroke-width={2}
          stroke-dasharray="0.1 3.6"
          stroke-linecap="round"
        />
      )}
    </g>
  );
}

function presentEnd(chart: BarLayout) {
  for (const panel of chart.panels) {
    for (const bar of panel.groups.flatMap((g) => g.bars)) if (bar.present) return { x: bar.end, y: bar.middle };
  }
  return undefined;
}
