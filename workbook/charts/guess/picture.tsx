import type { ComponentType, JSX } from 'preact';
import { useFetched } from '../../drawing/index';
import { PlaceHolder } from '../frame/place-holder';
import type { GuessChartProps } from './view';

let here: ComponentType<GuessChartProps> | undefined;

/** Brings what draws it. */
export async function fetchGuessPicture(): Promise<void> {
  here ??= (await import('./view')).GuessChart;
}

/** The chart that a line is drawn on; what draws it is fetched when the first one is to be drawn. */
export function GuessPicture(props: GuessChartProps): JSX.Element {
  const Picture = useFetched(() => here, fetchGuessPicture);
  return Picture ? <Picture {...props} /> : <PlaceHolder panels={1} />;
}
