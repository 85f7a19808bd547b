import { axisX, axisY, gridY, line, plot, rect, ruleY } from '@observablehq/plot';
import { ink } from '../drawing/index';
import type { ChartLayout, DrawnPanel } from './layout';

const LINE_WIDTH = 1.8;
const TICK = 4;
const X_ROOM = 20;

/** Grid, limits, lines and axes of one panel, drawn by Plot; its elements come without the library's own frame and style sheet. */
export function paintPanel(
  chart: ChartLayout,
  panel: DrawnPanel,
  hatch: string,
  withX: boolean,
  document: Document,
): Element[] {
  const { box, range } = panel;
  const [x1, x2] = chart.xRange;
  const painted = plot({
    document,
    width: chart.width,
    height: box.bottom - box.top + X_ROOM,
    marginLeft: box.left,
    marginRight: chart.width - box.right,
    marginTop: 0,
    marginBottom: X_ROOM,
    x: { domain: chart.xRange, axis: null },
    y: { domain: range, axis: null },
    marks: [
      gridY({ ticks: panel.ticks.values, stroke: ink('hairline'), strokeOpacity: 1 }),
      panel.zones.map(({ zone }) =>
        rect([zone], {
          x1,
          x2,
          y1: zone.limit,
          y2: zone.side === 'below' ? range[0] : range[1],
          fill: `url(#${hatch})`,
        }),
      ),
      ruleY(
        panel.zones.map(({ zone }) => zone.limit),
        { stroke: ink('limit'), strokeWidth: 1 },
      ),
      panel.lines.map(({ style, points }) =>
        line(points, {
          x: 'x',
          y: 'y',
          stroke: style.line,
          strokeWidth: LINE_WIDTH,
          strokeDasharray: style.dash || undefined,
          strokeLinecap: style.dash === '' ? 'round' : 'butt',
        }),
      ),
      axisY({
        ticks: panel.ticks.values,
        tickFormat: panel.ticks.text,
        tickSize: TICK,
        label: null,
        color: ink('ink'),
      }),
      ruleY([range[0]], { stroke: ink('ink'), strokeWidth: 1 }),
      withX
        ? axisX({
            ticks: chart.xTicks.values,
            tickFormat: chart.xTicks.text,
            tickSize: TICK,
            label: null,
            color: ink('ink'),
          })
        : null,
    ],
  });
  const elements = [...painted.children].filter((child) => child.tagName.toLowerCase() !== 'style');
  for (const element of elements) if (element.hasAttribute('aria-label')) element.setAttribute('role', 'group');
  return elements;
}
