import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { formatNumber, formatQuantity } from '../../../engine/index';
import { ink, LABEL_SIZE, useWidth } from '../../drawing/index';
import { limitNotes, missingSentence } from '../frame/caption';
import { ChartFigure } from '../frame/chart-figure';
import type { Measure } from '../frame/family';
import type { TableData } from '../frame/figures';
import { Frame } from '../frame/frame';
import { Hatch } from '../frame/hatch';
import { halo, round, Words } from '../frame/marks';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { PartsChartProps, SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { NOW_RADIUS } from '../frame/spots';
import { inSentence, leftOut, listed } from '../frame/words';
import { type BarData, barsOfParts, barsOfSweep } from './bars';
import { BAR_TITLE_LINE, type BarLayout, type DrawnBarPanel, type DrawnGroup, FIGURE_GAP, layOutBars } from './layout';

type Props = SweepChartProps | PartsChartProps;

/** Bars from zero: of a result over an axis, or of every part. */
export function BarChart(props: Props): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const data = 'parts' in props ? barsOfParts(props) : barsOfSweep(props);
  return (
    <div ref={host}>
      {typeof data === 'string' ? <p>{data}</p> : <BarPicture of={props} data={data} width={props.width ?? measured} />}
    </div>
  );
}

interface PictureProps {
  readonly of: Props;
  readonly data: BarData;
  readonly width: number;
  /** What to see, where the bars themselves don't say it. */
  readonly sentences?: readonly string[];
  /** Its numbers, where they aren't one a bar. */
  readonly table?: () => TableData;
}

export function BarPicture({ of, data, width, sentences, table }: PictureProps): JSX.Element {
  const hatch = `hatch-${useId()}`;
  const before = useRef<BarLayout | undefined>(undefined);
  const chart = layOutBars(data, of, width, before.current);
  before.current = chart;
  return (
    <ChartFigure
      title={of.cell.title}
      sentences={sentences ?? captionOf(of, data, chart)}
      width={chart.width}
      height={chart.height}
      start={presentEnd(chart)}
      series={() => readings(chart)}
      table={table ?? (() => tableOf(data))}
    >
      <Hatch id={hatch} />
      {chart.panels.map((panel) => (
        <Frame
          key={panel.panel.path}
          width={chart.width}
          box={panel.box}
          across={{ range: panel.range, ticks: panel.ticks, grid: true }}
          up={{ range: [0, 1] }}
          forbidden={panel.zones.map(({ zone }) => ({
            across: zone.side === 'below' ? [panel.range[0], zone.limit] : [zone.limit, panel.range[1]],
            limitAcross: zone.limit,
          }))}
          hatch={hatch}
        />
      ))}
      {chart.panels.map((panel) => (
        <PanelBars key={panel.panel.path} panel={panel} />
      ))}
    </ChartFigure>
  );
}

function PanelBars({ panel }: { panel: DrawnBarPanel }): JSX.Element {
  const zero = round(panel.x(0));
  const line = <line x1={zero} x2={zero} y1={panel.box.top} y2={panel.box.bottom} stroke={ink('ink')} />;
  // Names that stand over their bars cross the line of nothing, so it lies under them.
  const under = panel.groups.some((group) => group.above);
  return (
    <g data-panel={panel.panel.path}>
      <text y={panel.titleTop + LABEL_SIZE + 1}>
        {panel.titleLines.map((line, k) => (
          <tspan key={line} x={0} dy={k === 0 ? 0 : BAR_TITLE_LINE}>
            {line}
          </tspan>
        ))}
      </text>
      {under && line}
      {panel.groups.map((group) => (
        <Group key={group.key} group={group} zero={zero} edge={panel.box.left} />
      ))}
      {!under && line}
      {panel.zones.map(({ zone, words }) => words && <Words key={`${zone.side} ${zone.limit}`} words={words} />)}
    </g>
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
      {group.bars.map(({ key, box, end, middle, style, text, present, whisker }) => (
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
            x={round(end < zero ? end - FIGURE_GAP : Math.max(end, whisker?.[1] ?? end) + FIGURE_GAP)}
            y={round(middle + LABEL_SIZE * 0.36)}
            text-anchor={end < zero ? 'end' : undefined}
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

const quantity = ({ info }: Measure, si: number): string => formatQuantity(si, info.unit, { suffix: info.suffix });

/** Each bar is a series of its own, so that the upright arrows go from one to the next. */
const readings = (chart: BarLayout): ReadSeries[] =>
  chart.panels.flatMap(({ panel, groups, box }) =>
    groups.flatMap((group) =>
      group.bars.map(
        (bar): ReadSeries => ({
          name: [group.label, bar.label].filter((each) => each !== '').join(', '),
          plot: { ...box, left: bar.end },
          points: [{ at: { x: bar.end, y: bar.middle }, lines: [`${panel.info.title} ${panel.text(bar.si)}`] }],
        }),
      ),
    ),
  );

function tableOf({ panels, of }: BarData): TableData {
  const lines = [
    ...new Map(panels.flatMap((p) => p.groups.flatMap((g) => g.bars.map((b) => [b.style, b.label])))).entries(),
  ];
  const named = lines.length > 1;
  const keys = [...new Map(panels.flatMap((p) => p.groups.map((g) => [g.key, g.label]))).entries()];
  return {
    head: [
      [
        { text: of, rows: named ? 2 : 1 },
        ...panels.map((p) => ({ text: p.title, columns: Math.max(1, lines.length) })),
      ],
      ...(named ? [panels.flatMap(() => lines.map(([, label]) => ({ text: label as string })))] : []),
    ],
    rows: keys.map(([key, label]) => ({
      head: label as string,
      cells: panels.flatMap((panel) => {
        const group = panel.groups.find((g) => g.key === key);
        return (lines.length === 0 ? [[0]] : lines).map(([style]) => {
          const bar = group?.bars.find((b) => b.style === style);
          return bar ? formatNumber(panel.shown(bar.si)) : '–';
        });
      }),
    })),
  };
}

/** Names that the sentence about parts gives. */
const NAMED = 3;

function captionOf(props: Props, data: BarData, chart: BarLayout): string[] {
  const sentences = 'parts' in props ? [partsSentence(data)] : data.panels.map(rangeSentence);
  sentences.push(...limitNotes(chart.panels));
  for (const panel of data.panels) {
    if (panel.unasked) sentences.push(`The sweep ${props.cell.sweep} was not asked for ${panel.info.title}.`);
  }
  if (chart.panels.some((p) => p.groups.some((g) => g.baseline !== undefined))) sentences.push('Dotted: baseline.');
  if (data.held.length > 0) sentences.push(`At ${data.held.join(', ')}.`);
  if (chart.left > 0) sentences.push(`${chart.left} more are not drawn.`);
  sentences.push('parts' in props ? leftOut(data.missing, data.total, 'parts') : missingSentence(props.progress));
  return sentences;
}

/** "Line pull runs from 24.5 N (0.46 mm) to 27.1 N (0.30 mm)." */
function rangeSentence(panel: BarData['panels'][number]): string {
  const bars = panel.groups.flatMap((g) =>
    g.bars.map((bar) => ({ si: bar.si, label: [g.label, bar.label].filter((each) => each !== '').join(', ') })),
  );
  if (bars.length < 2) return '';
  const least = bars.reduce((a, b) => (b.si < a.si ? b : a));
  const most = bars.reduce((a, b) => (b.si > a.si ? b : a));
  const end = ({ si, label }: typeof least): string => `${quantity(panel, si)} (${label})`;
  if (least.si === most.si) return `${panel.info.title} is ${quantity(panel, least.si)} throughout.`;
  return `${panel.info.title} runs from ${end(least)} to ${end(most)}.`;
}

/** "The greatest mass: engine 250 g, wing 180 g and body 90 g, together 61 % of all." */
function partsSentence({ panels: [panel] }: BarData): string {
  if (!panel || panel.groups.length === 0) return '';
  const first = panel.groups.slice(0, NAMED).map((g) => ({ si: g.bars[0]!.si, label: g.label }));
  const sum = panel.groups.reduce((total, g) => total + g.bars[0]!.si, 0);
  const oneSided = panel.groups.every((g) => g.bars[0]!.si >= 0);
  const share = first.reduce((total, each) => total + each.si, 0) / sum;
  const together = oneSided && sum > 0 ? `, together ${Math.round(100 * share)} % of all` : '';
  const named = listed(first.map(({ si, label }) => `${inSentence(label)} ${quantity(panel, si)}`));
  return `The greatest ${inSentence(panel.info.title)}: ${named}${together}.`;
}
