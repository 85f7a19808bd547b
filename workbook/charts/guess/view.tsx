import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { ink, LABEL_SIZE, useWidth } from '../../drawing/index';
import { fontFamily } from '../../theme/tokens';
import { Curve } from '../frame/curve';
import { Frame } from '../frame/frame';
import { round } from '../frame/marks';
import { lineStyle } from '../frame/palette';
import { AxisTitleWords, TitleWords } from '../frame/panel-view';
import { PLAIN_WIDTH } from '../frame/place-holder';
import { End } from '../line/end';
import { drawnBetween, keyed } from './draw';
import { type Guessed, type GuessLayout, layOutGuess } from './layout';

export interface GuessChartProps {
  readonly of: Guessed;
  /** What the picture says, for those who don't see it. */
  readonly says: string;
  /** The line that is being drawn, SI; missing: nothing is drawn any more. */
  readonly drawing?: { readonly heights: readonly number[]; onDraw(heights: readonly number[]): void };
}

/** A chart on which a line is drawn before the answer is shown, and with the answer when it is. */
export function GuessChart({ of, says, drawing }: GuessChartProps): JSX.Element {
  const [host, width] = useWidth(PLAIN_WIDTH);
  const chart = layOutGuess(of, width);
  const { height, box, across, up, title, xTitle, now, answer, lines, ends } = chart;
  const draws = drawing ? 'guess-draws' : '';
  return (
    <div ref={host} class={`guess-chart ${draws}`}>
      <svg
        role={drawing ? 'group' : 'img'}
        aria-label={says}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        font-family={fontFamily}
        font-size={LABEL_SIZE}
        fill={ink('ink')}
        style={{ display: 'block', fontVariantNumeric: 'tabular-nums' }}
      >
        <Frame width={width} box={box} across={across} up={{ ...up, grid: true }} forbidden={[]} hatch="" />
        <TitleWords of={title} />
        <AxisTitleWords of={xTitle} />
        {lines.map((points, k) => (
          <Curve key={k} points={points} style={lineStyle(k + 1)} />
        ))}
        {answer.length > 0 && (
          <g data-line="answer">
            <Curve points={answer} style={{ line: ink('ink'), text: ink('ink'), dash: '' }} />
          </g>
        )}
        {drawing && <Pen chart={chart} {...drawing} />}
        <circle
          data-mark="now"
          pointer-events="none"
          cx={round(now.x)}
          cy={round(now.y)}
          r={4.5}
          fill={ink('paper')}
          stroke={ink('ink')}
          stroke-width={1.6}
        />
        {ends.map((end) => (
          <End
            key={end.key}
            end={{ ...end, colour: end.key === 'answer' ? ink('ink') : lineStyle(Number(end.key) + 1).text }}
          />
        ))}
      </svg>
    </div>
  );
}

/** The line under the pen: drawn over the plot by mouse, pen or finger, or point by point by keys. */
function Pen({ chart, heights, onDraw }: { chart: GuessLayout } & NonNullable<GuessChartProps['drawing']>) {
  const { box, places, measures, across, up } = chart;
  const [at, setAt] = useState(0);
  const from = useRef<{ readonly x: number; readonly y: number } | undefined>(undefined);
  const handles = useRef<(SVGCircleElement | null)[]>([]);
  const ends = [chart.valueAt(box.bottom), chart.valueAt(box.top)] as const;
  const draw = (event: PointerEvent): void => {
    const svg = (event.currentTarget as SVGElement).ownerSVGElement!.getBoundingClientRect();
    const to = { x: event.clientX - svg.left, y: event.clientY - svg.top };
    onDraw(drawnBetween(heights, chart, from.current ?? to, to));
    from.current = to;
  };
  const press = (event: KeyboardEvent, k: number): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const next = keyed(event.key, k, heights, ends);
    if (!next) return;
    event.preventDefault();
    setAt(next.at);
    if (next.at !== k) handles.current[next.at]?.focus();
    if (next.heights !== heights) onDraw(next.heights);
  };
  const shownX = (k: number): number =>
    across.range[0] + ((across.range[1] - across.range[0]) * k) / (places.length - 1);
  return (
    <>
      <Curve points={places.map((x, k) => ({ x, y: chart.y(heights[k]!) }))} style={lineStyle(1)} />
      <rect
        class="guess-paper"
        x={box.left - 12}
        y={box.top - 6}
        width={box.right - box.left + 24}
        height={box.bottom - box.top + 12}
        fill="transparent"
        onPointerDown={(event) => {
          if (event.button !== 0) return;
          event.currentTarget.setPointerCapture?.(event.pointerId);
          from.current = undefined;
          draw(event);
        }}
        onPointerMove={(event) => event.buttons > 0 && from.current && draw(event)}
        onPointerUp={() => {
          from.current = undefined;
        }}
        onPointerCancel={() => {
          from.current = undefined;
        }}
      />
      {places.map((x, k) => (
        <circle
          key={k}
          ref={(handle) => {
            handles.current[k] = handle;
          }}
          class="guess-point"
          role="slider"
          tabIndex={k === at ? 0 : -1}
          aria-orientation="vertical"
          aria-label={`${measures.up.info.title} at ${measures.across.info.title} ${measures.across.text(siAt(chart, shownX(k)))}`}
          aria-valuemin={up.range[0]}
          aria-valuemax={up.range[1]}
          aria-valuenow={Number(measures.up.shown(heights[k]!).toPrecision(3))}
          aria-valuetext={measures.up.text(heights[k]!)}
          cx={round(x)}
          cy={round(chart.y(heights[k]!))}
          r={5}
          fill={ink('paper')}
          stroke={lineStyle(1).line}
          stroke-width={1.8}
          onFocus={() => setAt(k)}
          onKeyDown={(event) => press(event, k)}
        />
      ))}
    </>
  );
}

/** SI value of a number on the axis across. */
function siAt({ measures: { across } }: GuessLayout, shown: number): number {
  const per = across.shown(1) - across.shown(0);
  return (shown - across.shown(0)) / per;
}
