import type { ComponentType, JSX } from 'preact';
import { useFetched } from '../../drawing/index';
import { PlaceHolder } from '../frame/place-holder';
import type { BestChartProps } from './view';

let here: ComponentType<BestChartProps> | undefined;

/** Brings what draws it. */
export async function fetchBestPicture(): Promise<void> {
  here ??= (await import('./view')).BestChart;
}

/** The chart of best compromises; what draws it is fetched when the first one is to be drawn. */
export function BestPicture(props: BestChartProps): JSX.Element {
  const Picture = useFetched(() => here, fetchBestPicture);
  return Picture ? <Picture {...props} /> : <PlaceHolder panels={Math.max(1, props.cell.up.length)} />;
}
