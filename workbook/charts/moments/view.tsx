import type { JSX } from 'preact';
import { formatNumber } from '../../../engine/index';
import { ink, LABEL_SIZE, lineKinds, useWidth } from '../../drawing/index';

import { ChartFigure } from '../frame/chart-figure';
import { round } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { PartsChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence, leftOut, listed } from '../frame/words';
import {
  type DrawnSide,
  layOutMoments,
  type MomentLayout,
  type Moments,
  momentLine,
  percent,
  readMoments,
  type Side,
} from './layout';

/** Each part's moment about the CG: nose-heavy and tail-heavy ones stacked back to back. */
export function MomentChart(props: PartsChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const moments = readMoments(props);
  const empty = moments.nose.moments.length + moments.tail.moments.length === 0;
  return (
    <div ref={host}>
      {empty ? (
        <p>{props.parts.title} has no part with a moment yet. Give its parts a mass and a place.</p>
      ) : (
        <Picture title={props.cell.title} moments={moments} width={props.width ?? measured} />
      )}
    </div>
  );
}

function Picture({ title, moments, width }: { title: string; moments: Moments; width: number }): JSX.Element {
  const chart = layOutMoments(moments, width);
  const middle = width / 2;
  return (
    <ChartFigure
      title={title}
      sentences={captionOf(moments)}
      width={chart.width}
      height={chart.height}
      series={() => readings(moments, chart)}
      table={() => tableOf(moments)}
    >
      <text x={0} y={LABEL_SIZE + 1}>
        Moment about the CG, {moments.unit}
      </text>
      {chart.ticks.values.map((value) => (
        <g key={value}>
          {[chart.nose.right, chart.tail.left - 4].map((x) => (
            <line key={x} x1={x} x2={x + 4} y1={round(chart.y(value))} y2={round(chart.y(value))} stroke={ink('ink')} />
          ))}
          <text x={round(middle)} y={round(chart.y(value) + LABEL_SIZE * 0.36)} text-anchor="middle">
            {chart.ticks.text(value)}
          </text>
        </g>
      ))}
      <Stack drawn={chart.nose} style={0} chart={chart} outward={-1} />
      <Stack drawn={chart.tail} style={1} chart={chart} outward={1} />
    </ChartFigure>
  );
}

interface StackProps {
  readonly drawn: DrawnSide;
  readonly style: number;
  readonly chart: MomentLayout;
  readonly outward: 1 | -1;
}

function Stack({ drawn, style, chart, outward }: StackProps): JSX.Element {
  const { line, text } = lineStyle(style);
  const edge = outward < 0 ? drawn.left : drawn.right;
  return (
    <g data-side={drawn.side.name}>
      <text x={edge} y={round(chart.top - 9)} text-anchor={outward < 0 ? 'start' : 'end'} font-weight={700} fill={text}>
        {drawn.side.name}
      </text>
      {drawn.moments.map((each, k) => (
        <g key={each.key}>
          <rect
            data-moment={each.key}
            x={drawn.left}
            y={round(each.top)}
            width={drawn.right - drawn.left}
            height={round(each.bottom - each.top)}
            fill={line}
            fill-opacity={k % 2 === 0 ? 0.3 : 0.14}
            stroke={line}
            stroke-width={1}
          />
          <line
            x1={edge}
            y1={round((each.top + each.bottom) / 2)}
            x2={drawn.names - outward * 3}
            y2={round(each.at)}
            stroke={ink('muted')}
            stroke-width={lineKinds.thin.width}
          />
          <text text-anchor={outward < 0 ? 'end' : 'start'}>
            {each.lines.map((words, n) => (
              <tspan
                key={words}
                x={drawn.names}
                y={round(each.at - ((each.lines.length - 1) * momentLine) / 2 + n * momentLine + LABEL_SIZE * 0.36)}
              >
                {words}
              </tspan>
            ))}
          </text>
        </g>
      ))}
      <line x1={drawn.left - 3} x2={drawn.right + 3} y1={chart.bottom} y2={chart.bottom} stroke={ink('ink')} />
      {drawn.baseline !== undefined && (
        <line
          data-line="baseline"
          x1={drawn.left - 4}
          x2={drawn.right + 4}
          y1={round(drawn.baseline)}
          y2={round(drawn.baseline)}
          stroke={ink('muted')}
          stroke-width={2}
          stroke-dasharray="0.1 3.6"
          stroke-linecap="round"
        />
      )}
    </g>
  );
}

const readings = ({ unit }: Moments, chart: MomentLayout): ReadSeries[] =>
  [chart.nose, chart.tail].map((drawn) => ({
    name: drawn.side.name,
    points: drawn.moments.map((each) => ({
      at: { x: (drawn.left + drawn.right) / 2, y: (each.top + each.bottom) / 2 },
      lines: [each.title, `${formatNumber(each.size)} ${unit}`, `${percent(each.share)} of its side`],
    })),
  }));

const tableOf = ({ nose, tail, unit }: Moments) => ({
  head: [[{ text: 'Part' }, { text: 'Side' }, { text: `Moment about the CG, ${unit}` }, { text: 'Share of its side' }]],
  rows: [nose, tail].flatMap((side) =>
    side.moments.map((each) => ({
      head: each.title,
      cells: [side.name, formatNumber(each.size), percent(each.share)],
    })),
  ),
});

/** About the CG both sides hold the same, unless a part is left out. */
const balanced = (a: number, b: number): boolean => Math.abs(a - b) <= 0.005 * Math.max(a, b);
const rounded = (value: number): string => formatNumber(Number(value.toPrecision(3)));

/** Parts that the sentence names on each side. */
const NAMED = 2;

function captionOf({ nose, tail, unit, missing, total }: Moments): string[] {
  const first = (side: Side): string =>
    listed(side.moments.slice(0, NAMED).map((each) => `${inSentence(each.title)} ${percent(each.share)}`));
  const sentences = [
    balanced(nose.total, tail.total)
      ? `Each side holds ${rounded(nose.total)} ${unit}.`
      : `The nose-heavy side holds ${rounded(nose.total)} ${unit}, the tail-heavy side ${rounded(tail.total)} ${unit}.`,
    ...(nose.moments.length > 0 && tail.moments.length > 0
      ? [`Most of the nose-heavy side: ${first(nose)}; of the tail-heavy side: ${first(tail)}.`]
      : []),
  ];
  const then = Math.max(nose.baseline || 0, tail.baseline || 0);
  if (then > 0) sentences.push(`Dotted: the baseline, ${rounded(then)} ${unit}.`);
  sentences.push(leftOut(missing, total, 'parts'));
  return sentences;
}
