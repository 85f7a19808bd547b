import { type FlownAnswer, formatQuantity, fromSI, type LogCell, toSI } from '../../../engine/index';
import { lineStyle } from '../../charts/index';
import { SaveFigure } from '../../controls/save-figure';
import { ink, useWidth } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { SmallPicture } from '../shared/small-picture';
import { layMeasured } from './measured-layout';
import { measuredSentence } from './measured-words';
import { flightTitle } from './words';

/** What was measured beside what the design as it stands would have done, flight by flight, one picture a result. */
export function Measured({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.flown.watch(cell.name), cell.name);
  const answer = sheet.flown.of(cell.name).value;
  const paths = [...new Set(answer?.numbers.map(({ path }) => path))];
  return (
    <div class="measured" ref={watched} aria-busy={sheet.flown.working(cell.name).value}>
      {answer && paths.length > 0 && (
        <>
          <h3>Measured against predicted</h3>
          {paths.map((path) => (
            <Picture key={path} cell={cell} path={path} answer={answer} />
          ))}
          <p class="aside">
            Dots: measured, with one measuring error to either side. Dashes: what the design as it stands would have
            done that day.
          </p>
        </>
      )}
      {answer?.leftOut.map(({ row, why }) => (
        <p key={row} class="aside">
          {flightTitle(cell, row)} is not in the picture. {why}
        </p>
      ))}
    </div>
  );
}

function Picture(props: { cell: LogCell; path: string; answer: FlownAnswer }) {
  const { cell, path, answer } = props;
  const sheet = useSheet();
  const [room, width] = useWidth(480);
  const { unit = '', suffix = '', title = path } = sheet.name(path) ?? {};
  const numbers = answer.numbers.filter((each) => each.path === path);
  const layout = layMeasured(numbers, width, { toShown: (si) => fromSI(si, unit), toSI: (shown) => toSI(shown, unit) });
  const show = (si: number): string => formatQuantity(si, unit, { suffix });
  const { left, right, flights } = layout;
  const sentence = measuredSentence(title, numbers, (si) =>
    formatQuantity(si, unit, { suffix, difference: true, sign: true }),
  );
  const { line } = lineStyle(0);
  const half = Math.min(9, (right - left) / (2 * flights.length) - 1);
  return (
    <figure class="measured-picture">
      <div ref={room}>
        <SmallPicture width={width} frame={layout} about={sentence} written={show}>
          {flights.map(({ row, x, measured, top, bottom, predicted }, k) => (
            <g key={row}>
              <line
                stroke={ink('ink')}
                stroke-width={2}
                stroke-dasharray="4 2"
                x1={x - half}
                x2={x + half}
                y1={predicted}
                y2={predicted}
              />
              <line stroke={line} x1={x} x2={x} y1={top} y2={bottom} />
              <circle cx={x} cy={measured} r={3.5} fill={line}>
                <title>
                  {flightTitle(cell, row)}: {show(numbers[k]!.value)} measured, {show(numbers[k]!.predicted)} predicted
                </title>
              </circle>
            </g>
          ))}
        </SmallPicture>
      </div>
      <figcaption class="aside">{sentence}</figcaption>
      <SaveFigure title={`${title}, measured against predicted`} draw={() => <Picture {...props} />} />
    </figure>
  );
}
