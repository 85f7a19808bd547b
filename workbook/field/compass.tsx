import { bearingWords } from './words';

const POINTS = 16;
const TURN = 2 * Math.PI;
const SIZE = 240;
const MIDDLE = SIZE / 2;

/** A bearing by thumb: sixteen points around a ring, or a step to either side by arrow keys. */
export function CompassRing(props: { title: string; bearing: number; onPick(bearing: number): void }) {
  const { title, bearing, onPick } = props;
  const step = TURN / POINTS;
  const now = Math.round(bearing / step) % POINTS;
  return (
    <fieldset class="compass-ring">
      <legend>
        {title}: {bearingWords(bearing)}
      </legend>
      <div style={{ width: `${SIZE}px`, height: `${SIZE}px` }}>
        {Array.from({ length: POINTS }, (_, k) => {
          const [x, y] = [Math.sin(k * step), -Math.cos(k * step)];
          const main = k % 4 === 0;
          const out = MIDDLE - 24;
          return (
            <label
              key={k}
              class={k === now ? 'picked' : ''}
              style={{ left: `${MIDDLE + out * x - 22}px`, top: `${MIDDLE + out * y - 22}px` }}
            >
              <input
                type="radio"
                class="unseen"
                name={title}
                aria-label={`${title} ${bearingWords(k * step)}`}
                checked={k === now}
                onChange={() => onPick(k * step)}
              />
              {main ? ['N', 'E', 'S', 'W'][k / 4] : '·'}
            </label>
          );
        })}
      </div>
    </fieldset>
  );
}
