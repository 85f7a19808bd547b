import type { JSX } from 'preact';
import { useWidth } from '../../drawing/index';
import { BarPicture } from '../bars/view';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';
import { causesSentence, sharesSentence } from '../frame/spread-words';
import { type ShareData, sharesOf } from './layout';

/** What makes how much of the spread of a result, the greatest first. */
export function ShareChart(props: SweepChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const data = sharesOf(props);
  const empty = typeof data === 'string' ? data : data.panels.every((panel) => panel.groups.length === 0) && NO_SHARES;
  return (
    <div ref={host}>
      {typeof data === 'string' || empty ? (
        <p>{empty}</p>
      ) : (
        <BarPicture of={props} data={data} width={props.width ?? measured} sentences={captionOf(props, data)} />
      )}
    </div>
  );
}

const NO_SHARES = 'The shares come when enough designs are computed.';

function captionOf({ progress, cell, names }: SweepChartProps, { rest }: ShareData): string[] {
  const spread = progress.spread!;
  const results = cell.up.flatMap((path) => spread.results.find((each) => each.path === path) ?? []);
  const sentences = results.map((result) => sharesSentence(spread, result, names));
  sentences.push('Shares are of the variance, with one standard error.');
  if (rest > 0) sentences.push(`${rest} more with less are not drawn.`);
  sentences.push(causesSentence(spread));
  return sentences;
}
