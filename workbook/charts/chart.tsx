import type { ComponentType, JSX } from 'preact';
import type { ChartCell } from '../../engine/index';
import { useFetched } from '../drawing/index';
import { PlaceHolder } from './frame/place-holder';
import type { ChartProps } from './frame/props';
import { chartKinds } from './kinds';

type Kind = ChartCell['chart'];
const here = new Map<Kind, ComponentType<ChartProps>>();

/** Brings what draws a kind of chart. */
export async function fetchChart(kind: Kind): Promise<void> {
  if (here.has(kind)) return;
  // What the cell is drawn from goes by its kind, so it is what this component takes.
  here.set(kind, (await chartKinds[kind]()) as ComponentType<ChartProps>);
}

/** A chart of whatever kind its cell asks for. */
export function Chart(props: ChartProps): JSX.Element {
  const kind = props.cell.chart;
  const Kind = useFetched(
    () => here.get(kind),
    () => fetchChart(kind),
    kind,
  );
  return Kind ? <Kind {...props} /> : <PlaceHolder panels={Math.max(1, props.cell.up.length)} />;
}
