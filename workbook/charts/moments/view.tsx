import type { JSX } from 'preact';
import { ink, LABEL_SIZE, lineKinds } from '../../drawing/index';
import { VariantLine } from '../frame/curve';
import { chartOf, type Drawn } from '../frame/kind';
import { round } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import type { PartsChartProps } from '../frame/props';
import { type DrawnSide, layOutMoments, type MomentLayout, type Moments, momentLine, readMoments } from './layout';
import { momentReadings, momentSentences, momentTable } from './words';

/** Each part's moment about the CG: nose-heavy and tail-heavy ones stacked back to back. */
export const MomentChart = chartOf({
  read: readMoments,
  layOut: layOutMoments,
  Whole: Stacks,
  about: ({ data: { unit } }) =>
    `Two stacks back to back: moments of the parts about the CG, ${unit}, nose-heavy and tail-heavy.`,
  sentences: momentSentences,
  readings: momentReadings,
  table: momentTable,
});

function Stacks({ data: moments, chart }: Drawn<PartsChartProps, Moments, MomentLayout>): JSX.Element {
  const middle = chart.width / 2;
  return (
    <>
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
    </>
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
      <text
        x={outward < 0 ? drawn.right : drawn.left}
        y={round(chart.top - 9)}
        text-anchor={outward < 0 ? 'end' : 'start'}
        font-weight={700}
        fill={text}
      >
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
      {drawn.others.map(({ order, at }) => (
        <VariantLine
          key={order}
          from={{ x: outward < 0 ? drawn.right + 4 : drawn.left - 4, y: at }}
          to={{ x: outward < 0 ? drawn.left - 6 : drawn.right + 6, y: at }}
          order={order}
        />
      ))}
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
