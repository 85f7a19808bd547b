import type { JSX } from 'preact';
import { leverEffect } from '../../../engine/index';
import { useWidth } from '../../drawing/index';
import { BarPicture } from '../bars/view';
import { PLAIN_WIDTH } from '../frame/place-holder';
import type { SweepChartProps } from '../frame/props';
import { barsOfLevers, changeTitle, effectsIn, type LeverBars, leverSentences } from './layout';

/** What each change does to each result: bars both ways from nothing, the strongest lever first. */
export function LeverChart(props: SweepChartProps): JSX.Element {
  const [host, measured] = useWidth(props.width ?? PLAIN_WIDTH);
  const data = barsOfLevers(props.progress, props.names, props.optionTitle);
  const empty = data.panels.every(({ groups }) => groups.length === 0);
  const sentences = leverSentences(data);
  return (
    <div ref={host}>
      {empty ? (
        <p>{sentences.join(' ') || 'No change has an answer yet.'}</p>
      ) : (
        <BarPicture
          of={props}
          data={data}
          width={props.width ?? measured}
          sentences={sentences}
          table={() => tableOf(props, data)}
        />
      )}
    </div>
  );
}

/** Every change with what it does to each result, in the order of the rows. */
function tableOf({ progress, names, optionTitle }: SweepChartProps, { panels }: LeverBars) {
  return {
    head: [[{ text: 'Change' }, ...panels.map(({ info }) => ({ text: info.title }))]],
    rows: progress.levers!.changes.map((change, k) => ({
      head: changeTitle(change, names.get(change.path)!, optionTitle),
      cells: progress.wanted.map((path, w) => effectsIn(progress, w, names.get(path)!)(leverEffect(progress, w, k))),
    })),
  };
}
