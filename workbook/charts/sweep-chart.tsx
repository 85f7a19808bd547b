import type { ComponentType, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { chartKinds } from './kinds';
import { PlaceHolder } from './place-holder';
import type { SweepChartProps } from './props';

type Kind = SweepChartProps['cell']['chart'];
const here = new Map<Kind, ComponentType<SweepChartProps>>();

/** The chart of a sweep, of whatever kind its cell asks for. */
export function SweepChart(props: SweepChartProps): JSX.Element {
  const kind = props.cell.chart;
  const [, setArrived] = useState(0);
  useEffect(() => {
    const load = chartKinds[kind];
    if (here.has(kind) || !load) return;
    void load().then((component) => {
      here.set(kind, component);
      setArrived((n) => n + 1);
    });
  }, [kind]);
  const Chart = here.get(kind);
  return Chart ? <Chart {...props} /> : <PlaceHolder panels={props.cell.up.length} />;
}
