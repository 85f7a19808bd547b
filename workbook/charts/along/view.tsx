import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import { useWidth } from '../../drawing/index';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { TraceChartProps } from '../frame/props';
import { type ChartLayout, layOutPlot } from '../line/layout';
import { LinePanels } from '../line/picture';
import { type Along, plotAlong, readAlong } from './layout';
import { alongCaption, alongReadings, alongTable } from './words';

/** What runs along something as lines: one panel for each unit, one line for each quantity. */
export function AlongChart(props: TraceChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const along = readAlong(props);
  return (
    <div ref={host}>
      {typeof along === 'string' ? (
        <p>{along}</p>
      ) : (
        <Picture of={props} along={along} width={props.width ?? measured} />
      )}
    </div>
  );
}

function Picture({ of, along, width }: { of: TraceChartProps; along: Along; width: number }): JSX.Element {
  const before = useRef<ChartLayout | undefined>(undefined);
  const chart = layOutPlot(plotAlong(along, of), width, of.moving, before.current);
  before.current = chart;
  return (
    <LinePanels
      title={of.cell.title}
      chart={chart}
      sentences={alongCaption(along, chart, of)}
      start={chart.panels[0]?.lines[0]?.placed[0]}
      series={() => alongReadings(along, chart)}
      table={() => alongTable(along, of.trace)}
    />
  );
}
