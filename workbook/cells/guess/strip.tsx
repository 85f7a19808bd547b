import type { GuessCell, NameInfo, UnitSet } from '../../../engine/index';
import { ink, SMALL_SIZE, textWidth, useWidth } from '../../drawing/index';
import { showValue } from '../../store/show';
import { fontFamily } from '../../theme/tokens';
import { guessText, inShown, readGuess, stripOf } from './words';

const ROW = 22;
const TOP = 24;
const GAP = 8;
const MOST_NAME = 14;

/** The guesses of a class as a strip, one row each from the least to the greatest, with the answer as a line through all. */
export function Strip(props: { cell: GuessCell; info: NameInfo; answer: number; units: UnitSet }) {
  const { cell, info, answer, units } = props;
  const [room, width] = useWidth(480);
  const read = cell.guesses
    .flatMap(({ by, text }) => {
      const guess = readGuess(text, info, units);
      return guess.ok ? [{ by, si: guess.si }] : [];
    })
    .sort((a, b) => a.si - b.si);
  if (Number.isNaN(answer) || read.length === 0) return null;
  const { at } = stripOf([answer, ...read.map(({ si }) => si)].map((si) => inShown(info, si)));
  const names = read.map(({ by }) => (by.length > MOST_NAME ? `${by.slice(0, MOST_NAME - 1)}…` : by));
  const values = read.map(({ si }) => guessText(info, si));
  const left = GAP + Math.max(...names.map((name) => textWidth(name, SMALL_SIZE)));
  const right = width - GAP - Math.max(...values.map((value) => textWidth(value, SMALL_SIZE)));
  const x = (share: number): number => left + 8 + share * (right - left - 16);
  const height = TOP + read.length * ROW + 4;
  const is = showValue(info, answer);
  const half = textWidth(is, SMALL_SIZE) / 2 + 2;
  return (
    <div ref={room} class="guess-strip">
      <svg
        role="img"
        aria-label={`The answer is ${is}. ${read.map(({ by }, k) => `${by}: ${values[k]}`).join('. ')}.`}
        width={width}
        height={height}
        viewBox={`0 0 ${width} ${height}`}
        font-family={fontFamily}
        font-size={SMALL_SIZE}
        fill={ink('ink')}
      >
        {read.map(({ by }, k) => {
          const y = TOP + k * ROW + ROW / 2;
          return (
            <g key={by} data-guess={by}>
              <line x1={left + 4} x2={right - 4} y1={y} y2={y} stroke={ink('hairline')} />
              <text x={left - GAP + 4} y={y + 4} text-anchor="end">
                {names[k]}
              </text>
              <circle cx={x(at[k + 1]!)} cy={y} r={5} fill={ink('paper')} stroke={ink('ink')} stroke-width={1.6} />
              <text x={width} y={y + 4} text-anchor="end" fill={ink('muted')}>
                {values[k]}
              </text>
            </g>
          );
        })}
        <line x1={x(at[0]!)} x2={x(at[0]!)} y1={TOP - 4} y2={height} stroke={ink('ink')} stroke-width={2.2} />
        <text x={Math.min(Math.max(x(at[0]!), half), width - half)} y={TOP - 9} text-anchor="middle" font-weight={700}>
          {is}
        </text>
      </svg>
    </div>
  );
}
