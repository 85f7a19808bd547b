import type { ComponentType, JSX } from 'preact';
import { useFetched } from '../../drawing/index';
import { PlaceHolder } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';

let here: ComponentType<SweepChartProps> | undefined;

/** Brings what draws it. */
export async function fetchLeverPicture(): Promise<void> {
  here ??= (await import('./view')).LeverChart;
}

/** The chart of a cell of levers; what draws it is fetched when the first one is to be drawn. */
export function LeverPicture(props: SweepChartProps): JSX.Element {
  const Picture = useFetched(() => here, fetchLeverPicture);
  return Picture ? <Picture {...props} /> : <PlaceHolder panels={Math.max(1, props.progress.wanted.length)} />;
}
