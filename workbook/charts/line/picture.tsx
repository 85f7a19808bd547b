import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { ChartFigure, type ChartFigureProps } from '../frame/chart-figure';
import { Frame } from '../frame/frame';
import { Hatch } from '../frame/hatch';
import { Overlay } from '../frame/overlay';
import type { ChartLayout } from './layout';

interface LinesProps extends Omit<ChartFigureProps, 'width' | 'height' | 'children'> {
  readonly chart: ChartLayout;
}

/** Lines in their frames, one panel above the other, with their words and numbers. */
export function LinePanels({ chart, ...said }: LinesProps): JSX.Element {
  const hatch = `hatch-${useId()}`;
  return (
    <ChartFigure {...said} width={chart.width} height={chart.height}>
      <Hatch id={hatch} />
      {chart.panels.map((panel, k) => (
        <Frame
          key={panel.panel.path}
          width={chart.width}
          box={panel.box}
          across={{ range: chart.xRange, ticks: k === chart.panels.length - 1 ? chart.xTicks : undefined }}
          up={{ range: panel.range, ticks: panel.ticks, grid: true }}
          forbidden={panel.zones.map(({ zone }) => ({
            up: [zone.limit, panel.range[zone.side === 'below' ? 0 : 1]],
            limitUp: zone.limit,
          }))}
          hatch={hatch}
        />
      ))}
      <Overlay chart={chart} />
    </ChartFigure>
  );
}
