import { type Part, partFields } from '../../../engine/index';
import { arrowHead, ink, LABEL_SIZE, lineKinds, type Point } from '../../drawing/index';
import { useSheet } from '../../store/context';
import {
  behindLeader,
  besideDimension,
  FIGURE_WIDTH,
  type FigureDimension,
  type FigureLeader,
  SHAPE_FIGURES,
  type WordsPlace,
} from './shape-figures';
import { shapeWords } from './shapes';

/** The shape with its sizes on it, as they are typed: which number is which. Not to scale. */
export function ShapePicture({ table, part }: { table: string; part: Part }) {
  const sheet = useSheet();
  const { height, outlines, hidden = [], dimensions, leaders = [] } = SHAPE_FIGURES[part.shape];
  const fields = new Map(partFields(part.shape).map((field) => [field.name, field]));
  const words = (name: string): string => {
    const symbol = (fields.get(name)?.symbol ?? '').replace('_2', '₂');
    const typed = (part.fields[name] ?? '').trim() !== '';
    const shown = name === 'mass' && typed ? '' : typed ? sheet.entry(`${table}.${part.name}.${name}`) : '';
    return shown === '' ? symbol : `${symbol} ${shown}`;
  };
  const told = [...dimensions, ...leaders].map(({ of }) => {
    const text = words(of);
    return text.includes(' ') ? `${fields.get(of)?.title.toLowerCase()} ${text.slice(text.indexOf(' ') + 1)}` : '';
  });
  const label = [`Picture of ${part.title}, not to scale: ${shapeWords(part)}`, ...told.filter(Boolean)].join('; ');
  return (
    <svg
      class="shape-picture"
      role="img"
      aria-label={label}
      viewBox={`0 0 ${FIGURE_WIDTH} ${height}`}
      width={FIGURE_WIDTH}
      height={height}
      font-size={LABEL_SIZE}
      fill="none"
      stroke={ink('ink')}
    >
      {outlines.map((d) => (
        <path key={d} d={d} stroke-width={lineKinds.outline.width} stroke-linejoin="round" />
      ))}
      {hidden.map((d) => (
        <path key={d} d={d} stroke-width={lineKinds.centre.width} stroke-dasharray={lineKinds.centre.dash} />
      ))}
      {dimensions.map((each) => (
        <Dimension key={each.of} dimension={each} words={words(each.of)} />
      ))}
      {leaders.map((each) => (
        <Leader key={each.of} leader={each} words={words(each.of)} />
      ))}
    </svg>
  );
}

/** Below this length the arrows stand outside and point inward. */
const SHORT = 18;
const OVER = 3;
const OUTSIDE = 12;
const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
const beyond = (tip: Point, other: Point, by: number): Point => {
  const away = Math.hypot(tip.x - other.x, tip.y - other.y) || 1;
  return { x: tip.x + ((tip.x - other.x) / away) * by, y: tip.y + ((tip.y - other.y) / away) * by };
};
const points = (of: readonly Point[]): string => of.map(({ x, y }) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');

function Dimension({ dimension, words }: { dimension: FigureDimension; words: string }) {
  const { from, to, away } = dimension;
  const [a, b] = [plus(from, away), plus(to, away)];
  const short = Math.hypot(b.x - a.x, b.y - a.y) < SHORT;
  const [start, end] = short ? [beyond(a, b, OUTSIDE), beyond(b, a, OUTSIDE)] : [a, b];
  const heads = short ? [arrowHead(a, start), arrowHead(b, end)] : [arrowHead(a, b), arrowHead(b, a)];
  return (
    <g stroke-width={lineKinds.thin.width}>
      <path
        d={`M${from.x} ${from.y}L${points([beyond(a, from, OVER)])}M${to.x} ${to.y}L${points([beyond(b, to, OVER)])}`}
      />
      <path d={`M${points([start])}L${points([end])}`} />
      {heads.map((head, k) => (
        <polygon key={k} points={points(head)} fill={ink('ink')} stroke="none" />
      ))}
      <Words {...besideDimension(dimension)} text={words} />
    </g>
  );
}

function Leader({ leader, words }: { leader: FigureLeader; words: string }) {
  const { from, to } = leader;
  return (
    <g stroke-width={lineKinds.thin.width}>
      <path d={`M${from.x} ${from.y}L${to.x} ${to.y}h6`} />
      <circle cx={from.x} cy={from.y} r={1.5} fill={ink('ink')} stroke="none" />
      <Words {...behindLeader(leader)} text={words} />
    </g>
  );
}

/** Words with paper about them, so that a line behind them doesn't cross them. */
function Words({ at, anchor, text }: WordsPlace & { text: string }) {
  return (
    <text
      x={at.x}
      y={at.y}
      text-anchor={anchor}
      fill={ink('ink')}
      stroke={ink('paper')}
      stroke-width={3}
      stroke-linejoin="round"
      paint-order="stroke"
    >
      {text}
    </text>
  );
}
