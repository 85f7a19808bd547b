import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { useWidth } from '../../drawing/index';
import { limitNotes, limitSentence, missingSentence, slopeSentence, spanSentence } from '../frame/caption';
import { type Family, readFamily } from '../frame/family';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';
import { type ChartLayout, layOutChart } from './layout';
import { LinePanels } from './picture';
import { lineReadings, lineTable } from './readings';

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
  const { family, cell, width } = props;
  const before = useRef<ChartLayout | undefined>(undefined);
  const chart = layOutChart(family, props, width, before.current);
  before.current = chart;

  return (
    <LinePanels
      title={cell.title}
      chart={chart}
      sentences={captionOf(props, family, chart)}
      start={chart.panels.flatMap((panel) => panel.spots).find((spot) => spot.kind === 'now')?.at}
      series={() => lineReadings(family, props, chart)}
      table={() => lineTable(family, props)}
    />
  );
}

/** What to see in the chart, computed from it. */
function captionOf(props: SweepChartProps, family: Family, chart: ChartLayout): string[] {
  const { progress, names, values, cell } = props;
  const nowX = values[names.get(cell.across)?.slot ?? -1];
  const told = [slopeSentence(family, progress, nowX), limitSentence(family, chart.panels, progress)];
  const sentences = told.some((sentence) => sentence !== '') ? told : [spanSentence(family, progress)];
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
