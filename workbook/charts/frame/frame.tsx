import { axisX, axisY, gridX, gridY, plot, rect, ruleX, ruleY } from '@observablehq/plot';
import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { type Box, ink } from '../../drawing/index';
import { useTurn } from '../../store/unrolling';
import type { Ticks } from './ticks';
import type { Range } from './y-range';

const TICK = 4;
const X_ROOM = 20;

/** One direction of a plot: what it runs over, and what is written on it. */
export interface FrameAxis {
  readonly range: Range;
  /** Missing: nothing is written along it. */
  readonly ticks?: Ticks | undefined;
  readonly grid?: boolean;
}
/** A part of the plot that is forbidden, in the numbers of its axes; a missing side reaches to the plot's edge. */
export interface Forbidden {
  readonly across?: Range;
  readonly up?: Range;
  /** The limits themselves. */
  readonly limitAcross?: number;
  readonly limitUp?: number;
}
export interface FrameProps {
  readonly width: number;
  readonly box: Box;
  readonly across: FrameAxis;
  readonly up: FrameAxis;
  readonly forbidden: readonly Forbidden[];
  /** Id of the hatching. */
  readonly hatch: string;
}

/**
 * Grid, limits and axes of one plot, drawn by Plot without its own frame and style sheet. They are painted again only when
 * one of their numbers is another one: what moves with the hand is drawn above them.
 */
export function Frame(props: FrameProps): JSX.Element {
  const place = useRef<SVGGElement>(null);
  const { box, across, up, forbidden } = props;
  const painting = JSON.stringify([props.width, box, across.range, written(across), up.range, written(up), forbidden]);
  const mine = useTurn(true);
  useLayoutEffect(() => {
    const group = place.current;
    if (mine) group?.replaceChildren(...paint(props, group.ownerDocument));
  }, [painting, props.hatch, mine]);
  return <g ref={place} transform={`translate(0,${box.top})`} text-anchor="middle" />;
}

const written = ({ ticks }: FrameAxis): unknown => ticks?.values.map((v) => [v, ticks.text(v)]);

function paint({ width, box, across, up, forbidden, hatch }: FrameProps, document: Document): Element[] {
  const painted = plot({
    document,
    width,
    height: box.bottom - box.top + X_ROOM,
    marginLeft: box.left,
    marginRight: width - box.right,
    marginTop: 0,
    marginBottom: X_ROOM,
    x: { domain: across.range, axis: null },
    y: { domain: up.range, axis: null },
    marks: [
      up.grid ? gridY({ ticks: up.ticks?.values, stroke: ink('hairline'), strokeOpacity: 1 }) : null,
      across.grid ? gridX({ ticks: across.ticks?.values, stroke: ink('hairline'), strokeOpacity: 1 }) : null,
      forbidden.map((zone) => {
        const [x1, x2] = zone.across ?? across.range;
        const [y1, y2] = zone.up ?? up.range;
        return rect([zone], { x1, x2, y1, y2, fill: `url(#${hatch})` });
      }),
      ruleY(
        forbidden.flatMap((zone) => zone.limitUp ?? []),
        { stroke: ink('limit'), strokeWidth: 1 },
      ),
      ruleX(
        forbidden.flatMap((zone) => zone.limitAcross ?? []),
        { stroke: ink('limit'), strokeWidth: 1 },
      ),
      up.ticks ? axisY(axis(up.ticks)) : null,
      ruleY([up.range[0]], { stroke: ink('ink'), strokeWidth: 1 }),
      across.ticks ? axisX(axis(across.ticks)) : null,
    ],
  });
  const elements = [...painted.children].filter((child) => child.tagName.toLowerCase() !== 'style');
  for (const element of elements) if (element.hasAttribute('aria-label')) element.setAttribute('role', 'group');
  return elements;
}

const axis = (ticks: Ticks) => ({
  ticks: ticks.values,
  tickFormat: ticks.text,
  tickSize: TICK,
  label: null,
  color: ink('ink'),
});
