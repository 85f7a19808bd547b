import type { DayCard } from '../../engine/index';
import { ink } from '../drawing/index';
import { bearingWords } from './words';

const SIZE = 140;
const MIDDLE = SIZE / 2;
const RADIUS = 48;

/** The circle from above, north up: pilot, wind, where the pull is least, where to release and to shut off, the pit. */
export function DayRing({ card }: { card: DayCard }) {
  const { from } = card.form;
  const at = (bearing: number, r: number): readonly [number, number] => [
    MIDDLE + r * Math.sin(bearing),
    MIDDLE - r * Math.cos(bearing),
  ];
  const marks = [
    ['R', card.release],
    ['S', card.shutOff],
    ['P', card.form.pit],
  ] as const;
  const [wx, wy] = at(from, RADIUS + 20);
  const [tx, ty] = at(from, 16);
  const [ux, uy] = at(from, RADIUS);
  const said = `Circle from above, north up. Wind from ${bearingWords(from)}, upwind there. Release at ${bearingWords(card.release)}, shut off at ${bearingWords(card.shutOff)}, pit at ${bearingWords(card.form.pit)}.`;
  return (
    <svg class="day-ring" width={SIZE} height={SIZE} viewBox={`0 0 ${SIZE} ${SIZE}`} role="img" aria-label={said}>
      <defs>
        <marker id="day-arrow" markerWidth="8" markerHeight="8" refX="6" refY="4" orient="auto">
          <path d="M0 0L8 4L0 8z" fill={ink('ink')} />
        </marker>
      </defs>
      <circle cx={MIDDLE} cy={MIDDLE} r={RADIUS} fill="none" stroke={ink('ink')} stroke-width="2" />
      <circle cx={MIDDLE} cy={MIDDLE} r="4" fill={ink('ink')} />
      <line x1={wx} y1={wy} x2={tx} y2={ty} stroke={ink('ink')} stroke-width="4" marker-end="url(#day-arrow)" />
      <circle cx={ux} cy={uy} r="6" fill={ink('paper')} stroke={ink('ink')} stroke-width="2" />
      {apart(marks.filter(([, bearing]) => !Number.isNaN(bearing))).map(([letter, bearing, r]) => {
        const [x, y] = at(bearing, RADIUS);
        const [lx, ly] = at(bearing, r);
        return (
          <g key={letter}>
            <circle cx={x} cy={y} r="5" fill={ink('ink')} />
            <text x={lx} y={ly + 6} text-anchor="middle" font-size="18" font-weight="700" fill={ink('ink')}>
              {letter}
            </text>
          </g>
        );
      })}
    </svg>
  );
}

/** Letters of places that lie close together stand inside and outside by turns. */
function apart(marks: readonly (readonly [string, number])[]): readonly (readonly [string, number, number])[] {
  const order = marks.toSorted(([, a], [, b]) => a - b);
  let inside = false;
  return order.map(([letter, bearing], k) => {
    const before = order[k - 1];
    inside = before !== undefined && bearing - before[1] < 0.45 && !inside;
    return [letter, bearing, inside ? RADIUS - 18 : RADIUS + 14] as const;
  });
}
