import { fromSI, toSI, type WeighingAnswer } from '../../../engine/index';
import { lineStyle } from '../../charts/index';
import { SaveFigure } from '../../controls/save-figure';
import { ink, useWidth } from '../../drawing/index';
import { SmallPicture } from '../shared/small-picture';
import { layHistory } from './history-layout';
import { historySentence, type Written } from './words';

/** Where the CG of the finished model was told to lie after each weighing, with its band; and where it is wanted. */
export function History(props: {
  answer: WeighingAnswer;
  written: Written;
  unit: string;
  titleOf(path: string): string;
}) {
  const { answer, written, unit, titleOf } = props;
  const [room, width] = useWidth(480);
  const layout = layHistory(answer, width, { toShown: (si) => fromSI(si, unit), toSI: (shown) => toSI(shown, unit) });
  const { line } = lineStyle(0);
  const { left, right, points, band, wanted } = layout;
  return (
    <figure class="bench-history">
      <div ref={room}>
        <SmallPicture width={width} frame={layout} about={historySentence(answer, written)} written={written.at}>
          {points.length > 1 && <polygon points={band} fill={line} fill-opacity={0.18} />}
          {wanted && (
            <>
              <line stroke={ink('ink')} stroke-dasharray="7 4" x1={left} x2={right} y1={wanted.y} y2={wanted.y} />
              {wanted.top !== wanted.bottom && (
                <>
                  <line
                    stroke={ink('rule')}
                    stroke-dasharray="2 3"
                    x1={left}
                    x2={right}
                    y1={wanted.top}
                    y2={wanted.top}
                  />
                  <line
                    stroke={ink('rule')}
                    stroke-dasharray="2 3"
                    x1={left}
                    x2={right}
                    y1={wanted.bottom}
                    y2={wanted.bottom}
                  />
                </>
              )}
            </>
          )}
          <polyline
            points={points.map(({ x, y }) => `${x},${y}`).join(' ')}
            fill="none"
            stroke={line}
            stroke-width={2}
          />
          {points.map(({ x, y }, k) => (
            <circle key={answer.history[k]!.path} cx={x} cy={y} r={3} fill={line}>
              <title>{stepWords(answer.history[k]!, written, titleOf)}</title>
            </circle>
          ))}
        </SmallPicture>
      </div>
      <figcaption class="aside">
        {historySentence(answer, written)}
        {wanted && ' Dashed: where it is wanted.'} The band is one standard deviation: two times out of three the CG
        comes to lie in it.
      </figcaption>
      <SaveFigure title="CG after each weighing" draw={() => <History {...props} />} />
      {points.length > 1 && (
        <details>
          <summary>After each weighing</summary>
          <ol class="bench-steps">
            {answer.history.map((step) => (
              <li key={step.path}>{stepWords(step, written, titleOf)}</li>
            ))}
          </ol>
        </details>
      )}
    </figure>
  );
}

function stepWords(
  { path, x, band }: WeighingAnswer['history'][number],
  written: Written,
  titleOf: (path: string) => string,
): string {
  return `${path === '' ? 'Before any' : titleOf(path)}: ${written.at(x)} ${written.band(band)}`;
}
