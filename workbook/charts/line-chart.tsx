import './charts.css';
import type { JSX } from 'preact';
import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { ink, LABEL_SIZE, useWidth } from '../drawing/index';
import { fontFamily } from '../theme/tokens';
import { limitNotes, limitSentence, missingSentence, slopeSentence } from './caption';
import { type Family, readFamily } from './family';
import { Figures } from './figures';
import { Hatch } from './hatch';
import { type ChartLayout, layOutChart } from './layout';
import { Overlay } from './overlay';
import { paintPanel } from './paint-panel';
import { PLAIN_WIDTH } from './place-holder';
import type { SweepChartProps } from './props';

/** A sweep as lines: one panel for each result, one line for each value of the axis that tells them apart. */
export function LineChart(props: SweepChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const family = readFamily(props);
  return (
    <div ref={host}>
      {typeof family === 'string' ? (
        <p>{family}</p>
      ) : (
        <LinePicture {...props} family={family} width={props.width ?? measured} />
      )}
    </div>
  );
}

function LinePicture(props: SweepChartProps & { family: Family; width: number }): JSX.Element {
  const { family, progress, cell, width } = props;
  const hatch = `hatch-${useId()}`;
  const base = useRef<SVGGElement>(null);
  const before = useRef<ChartLayout | undefined>(undefined);
  const chart = layOutChart(family, props, width, before.current);
  before.current = chart;

  const sentences = captionOf(props, family, chart);
  const painting = chart.panels.flatMap((p) => [...p.range, ...p.zones.map((z) => z.zone.limit)]).join(' ');
  // What Plot paints changes with the sweep, the place and the ranges only; the marks that move with the hand lie above it.
  useLayoutEffect(() => {
    const group = base.current;
    if (!group) return;
    const document = group.ownerDocument;
    group.replaceChildren(
      ...chart.panels.map((panel, k) => {
        const place = document.createElementNS('http://www.w3.org/2000/svg', 'g');
        place.setAttribute('transform', `translate(0,${panel.box.top})`);
        place.append(...paintPanel(chart, panel, hatch, k === chart.panels.length - 1, document));
        return place;
      }),
    );
  }, [progress, props.names, cell, width, painting]);

  return (
    <figure class="chart-picture">
      <svg
        role="img"
        aria-label={[`${cell.title}.`, ...sentences].join(' ')}
        width={chart.width}
        height={chart.height}
        viewBox={`0 0 ${chart.width} ${chart.height}`}
        font-family={fontFamily}
        font-size={LABEL_SIZE}
        fill={ink('ink')}
        style={{ display: 'block', maxWidth: '100%', height: 'auto', fontVariantNumeric: 'tabular-nums' }}
      >
        <Hatch id={hatch} />
        <g ref={base} text-anchor="middle" />
        <Overlay chart={chart} />
      </svg>
      <figcaption class="chart-caption">{sentences.join(' ')}</figcaption>
      <Figures family={family} progress={progress} />
    </figure>
  );
}

/** What to see in the chart, computed from it. */
function captionOf(props: SweepChartProps, family: Family, chart: ChartLayout): string[] {
  const { progress, names, values, cell } = props;
  const nowX = values[names.get(cell.across)?.slot ?? -1];
  const sentences = [slopeSentence(family, progress, nowX), limitSentence(family, chart.panels, progress)];
  sentences.push(...limitNotes(chart.panels));
  for (const panel of family.panels) {
    if (!panel.column) sentences.push(`The sweep ${cell.sweep} was not asked for ${panel.info.title}.`);
  }
  if (family.held.length > 0) sentences.push(`At ${family.held.join(', ')}.`);
  if (family.panels.some((p) => p.now) && chart.panels.every((p) => p.spots.every((s) => s.kind !== 'now'))) {
    sentences.push('The present design lies outside this picture.');
  }
  sentences.push(missingSentence(progress));
  return sentences.filter((s) => s !== '');
}
