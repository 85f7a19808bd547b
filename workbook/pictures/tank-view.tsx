import type { JSX } from 'preact';
import type { UnitSet } from '../../engine/index';
import {
  arrowHead,
  type Box,
  ink,
  LABEL_SIZE,
  lineKinds,
  type Point,
  placeLabels,
  type Segment,
  segmentsOf,
  textWidth,
} from '../drawing/index';
import type { PlacedView } from './tank-layout';
import type { TankOutline } from './tank-outlines';
import { headWords, restWords, VIEW_TITLES } from './tank-words';

interface Props {
  readonly at: PlacedView;
  /** Of this view: what stands, and what is left. */
  readonly outlines: readonly TankOutline[];
  /** Id of the lines that mean fuel. */
  readonly fuel: string;
  readonly set: UnitSet;
}

const round = (v: number): number => Math.round(v * 10) / 10;
const path = (points: readonly Point[]): string => points.map((p) => `${round(p.x)},${round(p.y)}`).join(' ');
const MARKS = { pickup: 'pickup', uncovered: 'pickup, uncovered', vent: 'vent', spray: 'spray bar' } as const;
type MarkName = keyof typeof MARKS;
const isMark = (part: string): part is MarkName => part in MARKS;
const MARK = 4;
/** Beyond the spray bar and the tank the level of the fuel is drawn on so far. */
const BEYOND = 12;

/** One view of the tank with its fuel, its marks and the head as a dimension. */
export function TankViewPicture({ at, outlines, fuel, set }: Props): JSX.Element {
  const of = (part: TankOutline['part']): TankOutline[] => outlines.filter((each) => each.part === part);
  const placed = (outline: TankOutline): Point[] => outline.points.map(at.place);
  const marks = outlines.filter((each) => isMark(each.part));
  const [head] = of('head');
  const dimension = head && placed(head);
  const strokes: Segment[] = [
    ...of('tank').flatMap((each) => segmentsOf(placed(each), true)),
    ...(dimension ? segmentsOf(dimension, false) : []),
  ];
  const texts = [
    ...marks.map((mark) => ({
      key: mark.part,
      at: placed(mark)[0]!,
      lines: [MARKS[mark.part as MarkName]],
      clear: MARK,
    })),
    ...(head && dimension
      ? [
          {
            key: 'head',
            at: middle(dimension[0]!, dimension[1]!),
            lines: [
              `head ${headWords(head.head, set)}`,
              ...(at.view === 'rest'
                ? restWords(head.head)
                    .split(': ')
                    .map((words, k) => (k === 0 ? `${words}:` : words))
                : []),
            ],
            clear: 2,
          },
        ]
      : []),
  ];
  const taken: Box[] = marks.map((mark) => around(placed(mark)[0]!));
  const frame = { ...at.area, top: at.area.top + LABEL_SIZE + 6 };
  const labels = placeLabels(
    texts.map(({ key, at: point, lines, clear }) => ({
      key,
      at: point,
      settings: [
        {
          width: Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 4,
          height: lines.length * (LABEL_SIZE + 2),
        },
      ],
      clear,
    })),
    { frame, taken, strokes, crowded: true },
  );
  return (
    <g data-view={at.view}>
      <text x={at.area.left} y={at.area.top + LABEL_SIZE} fill={ink('muted')}>
        {VIEW_TITLES[at.view]}
      </text>
      {of('fuel').map((each) => (
        <polygon
          key="fuel"
          data-part="fuel"
          points={path(placed(each))}
          fill={`url(#${fuel})`}
          stroke={`var(--series-blue, ${ink('ink')})`}
          stroke-width={lineKinds.thin.width}
        />
      ))}
      {of('tank').map((each) => (
        <polygon
          key="tank"
          points={path(placed(each))}
          fill="none"
          stroke={ink('ink')}
          stroke-width={lineKinds.outline.width}
          stroke-linejoin="round"
        />
      ))}
      {dimension && <HeadLine from={dimension[0]!} to={dimension[1]!} tank={of('tank').flatMap(placed)} />}
      {marks.map((mark) => (
        <Mark key={mark.part} part={mark.part as MarkName} at={placed(mark)[0]!} />
      ))}
      {labels.map((label) => {
        const lines = texts.find(({ key }) => key === label.key)!.lines;
        const warns = label.key === 'uncovered';
        return (
          <g key={label.key} fill={warns ? ink('limit') : ink('ink')}>
            {label.leader && (
              <line
                {...label.leader}
                x2={label.leader.x1}
                y2={label.leader.y1}
                x1={label.leader.x0}
                y1={label.leader.y0}
                stroke={ink('muted')}
                stroke-width={lineKinds.thin.width}
              />
            )}
            <text
              font-weight={label.key === 'head' ? 700 : undefined}
              stroke={ink('paper')}
              stroke-width={3.5}
              stroke-linejoin="round"
              paint-order="stroke"
            >
              {lines.map((line, k) => (
                <tspan
                  key={line}
                  x={round(label.box.left + 2)}
                  y={round(label.box.top + LABEL_SIZE + k * (LABEL_SIZE + 2))}
                >
                  {line}
                </tspan>
              ))}
            </text>
          </g>
        );
      })}
    </g>
  );
}

const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
const around = ({ x, y }: Point): Box => ({ left: x - MARK, right: x + MARK, top: y - MARK, bottom: y + MARK });

/** From the level that the fuel breathes from, square to it, to the spray bar; the level itself as a thin line. */
function HeadLine({ from, to, tank }: { from: Point; to: Point; tank: readonly Point[] }): JSX.Element | null {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < 1) return null;
  const across = { x: -(to.y - from.y) / length, y: (to.x - from.x) / length };
  const along = [from, ...tank].map((p) => (p.x - from.x) * across.x + (p.y - from.y) * across.y);
  const [low, high] = [Math.min(...along) - BEYOND, Math.max(...along) + BEYOND];
  const place = (share: number): Point => ({ x: from.x + share * across.x, y: from.y + share * across.y });
  const [a, b] = [place(low), place(high)];
  const thin = { stroke: ink('ink'), 'stroke-width': lineKinds.thin.width };
  return (
    <g data-part="head">
      <line x1={a.x} y1={a.y} x2={b.x} y2={b.y} {...thin} stroke-dasharray={lineKinds.centre.dash} />
      <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} {...thin} />
      <polygon points={path(arrowHead(from, to))} fill={ink('ink')} />
      <polygon points={path(arrowHead(to, from))} fill={ink('ink')} />
    </g>
  );
}

/** Pickup: a filled dot, crossed out where it is uncovered; vent: an open circle; spray bar: a cross in a circle. */
function Mark({ part, at: { x, y } }: { part: MarkName; at: Point }): JSX.Element {
  const thin = { stroke: ink('ink'), 'stroke-width': 1.2 };
  const bare = part === 'uncovered';
  if (part === 'pickup' || bare) {
    const stroke = bare ? ink('limit') : ink('ink');
    return (
      <g data-part={part} stroke={stroke} stroke-width={1.4}>
        <circle cx={x} cy={y} r={MARK - 1} fill={bare ? ink('paper') : ink('ink')} />
        {bare && <path d={`M${x - 6},${y - 6}l12,12M${x - 6},${y + 6}l12,-12`} fill="none" />}
      </g>
    );
  }
  return (
    <g data-part={part} {...thin}>
      <circle cx={x} cy={y} r={MARK} fill={ink('paper')} />
      {part === 'spray' && <path d={`M${x - MARK},${y}h${2 * MARK}M${x},${y - MARK}v${2 * MARK}`} />}
    </g>
  );
}
