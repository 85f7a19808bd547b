import { fromSI, toSI, type WeighingAnswer } from '../../../engine/index';
import { useWidth } from '../../drawing/index';
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
  const { height, left, right, points, band, ticks, wanted } = layout;
  return (
    <figure class="bench-history">
      <div ref={room}>
        <svg width={width} height={height} role="img" aria-label={historySentence(answer, written)}>
          {ticks.map(({ value, y }) => (
            <g key={y}>
              <line class="bench-rule" x1={left} x2={right} y1={y} y2={y} />
              <text x={left - 6} y={y + 4} text-anchor="end">
                {written.at(value)}
              </text>
            </g>
          ))}
          {points.length > 1 && <polygon class="bench-band" points={band} />}
          {wanted && (
            <>
              <line class="bench-wanted" x1={left} x2={right} y1={wanted.y} y2={wanted.y} />
              {wanted.top !== wanted.bottom && (
                <>
                  <line class="bench-within" x1={left} x2={right} y1={wanted.top} y2={wanted.top} />
                  <line class="bench-within" x1={left} x2={right} y1={wanted.bottom} y2={wanted.bottom} />
                </>
              )}
            </>
          )}
          <polyline class="bench-line" points={points.map(({ x, y }) => `${x},${y}`).join(' ')} />
          {points.map(({ x, y }, k) => (
            <circle key={answer.history[k]!.path} class="bench-point" cx={x} cy={y} r={3}>
              <title>{stepWords(answer.history[k]!, written, titleOf)}</title>
            </circle>
          ))}
        </svg>
      </div>
      <figcaption class="aside">
        {historySentence(answer, written)}
        {wanted && ' Dashed: where it is wanted.'} The band is one standard deviation: two times out of three the CG
        comes to lie in it.
      </figcaption>
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
