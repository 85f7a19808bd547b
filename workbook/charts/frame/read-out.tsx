import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { ink, LABEL_SIZE, type Point, textWidth } from '../../drawing/index';
import { fontFamily } from '../../theme/tokens';
import { type Handle, textByKey, type Way } from './moves';
import { NowHandles } from './now-handles';
import type { Hand } from './props';
import { nearestReading, nextReading, type ReadAt, type Reading, type ReadSeries, readingAt, said } from './readings';
import { inSentence, listed } from './words';

export interface ReadOutProps {
  readonly title: string;
  /** What the picture says, for those who don't see it. */
  readonly says: string;
  readonly width: number;
  readonly height: number;
  /** Where reading by keyboard begins: the present design. */
  readonly start?: Point | undefined;
  /** Marks that can be moved, and who moves them. */
  readonly handles?: readonly Handle[] | undefined;
  readonly hand?: Hand | undefined;
  readonly series: () => readonly ReadSeries[];
  /** A value was pressed: the sample that it is of. */
  readonly onHold?: ((sample: number) => void) | undefined;
  readonly children: ComponentChildren;
}

/** A value is said aloud when the keys have rested this long. */
const REST_MS = 250;

/** The picture of a chart with its values read out under the pointer, under the finger and by arrow keys. */
export function ReadOut(props: ReadOutProps): JSX.Element {
  const { title, says, width, height, start, handles = [], hand, series, onHold, children } = props;
  const ways = handles[0]?.ways ?? [];
  const pushing = useRef(false);
  const [at, setAt] = useState<ReadAt | undefined>(undefined);
  const [aloud, setAloud] = useState('');
  const byKeys = useRef(false);
  const svg = useRef<SVGSVGElement>(null);
  const all = at === undefined ? [] : series();
  const reading = readingAt(all, at);
  const words = said(all, at);
  useEffect(() => {
    if (!byKeys.current) return;
    const timer = setTimeout(() => setAloud(words), REST_MS);
    return () => clearTimeout(timer);
  }, [words]);

  const readAt = (place: Point): void => {
    byKeys.current = false;
    setAt(nearestReading(series(), place));
  };
  const placeOf = (event: MouseEvent): Point | undefined => {
    const box = svg.current?.getBoundingClientRect();
    if (!box || box.width === 0) return undefined;
    const scale = width / box.width;
    return { x: (event.clientX - box.left) * scale, y: (event.clientY - box.top) * scale };
  };
  const follow = (event: PointerEvent): void => {
    const place = placeOf(event);
    if (place) readAt(place);
  };
  const hold = (event: MouseEvent): void => {
    const place = placeOf(event);
    if (!place) return;
    readAt(place);
    const all = series();
    const sample = readingAt(all, nearestReading(all, place))?.sample;
    if (sample !== undefined && event.button === 0) onHold?.(sample);
  };
  const press = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const pushed = event.shiftKey && hand ? textByKey(ways, event.key) : undefined;
    if (pushed) {
      event.preventDefault();
      pushing.current = true;
      hand!.move(pushed.way.path, pushed.text);
      setAloud(`${pushed.way.title} ${pushed.text}`);
      return;
    }
    if (event.key === 'Escape') setAt(undefined);
    if (event.key === 'Enter' && reading?.sample !== undefined) onHold?.(reading.sample);
    const now = series();
    const from = readingAt(now, at) ? at : undefined;
    const next = from ? nextReading(now, from, event.key) : event.key.startsWith('Arrow') && begin(now, start);
    if (!next) return;
    event.preventDefault();
    byKeys.current = true;
    setAt(next);
  };
  const rest = (): void => {
    if (!pushing.current) return;
    pushing.current = false;
    hand?.rest(true);
  };
  const leave = (): void => {
    rest();
    byKeys.current = false;
    setAt(undefined);
    setAloud('');
  };
  return (
    <div
      class="chart-read"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the arrow keys move along the values of the chart.
      tabIndex={0}
      role="application"
      aria-roledescription="chart"
      aria-label={`Values of ${title}. The arrow keys move along them.${onHold ? ' Enter takes the design of one.' : ''}${pushWords(ways)}`}
      onKeyDown={press}
      onKeyUp={rest}
      onBlur={leave}
    >
      <div class="chart-sheet" style={{ maxWidth: `${width}px` }}>
        {/* biome-ignore lint/a11y/useKeyWithClickEvents: Enter does the same from the chart as a whole. */}
        <svg
          ref={svg}
          role="img"
          aria-label={says}
          width={width}
          height={height}
          viewBox={`0 0 ${width} ${height}`}
          font-family={fontFamily}
          font-size={LABEL_SIZE}
          fill={ink('ink')}
          style={{ display: 'block', maxWidth: '100%', height: 'auto', fontVariantNumeric: 'tabular-nums' }}
          onPointerMove={follow}
          onPointerDown={follow}
          onClick={hold}
          onPointerLeave={(event) => event.pointerType === 'mouse' && setAt(undefined)}
        >
          {children}
          {reading && <Cross reading={reading} of={all[at!.series]!} width={width} />}
        </svg>
        {hand && <NowHandles handles={handles} hand={hand} width={width} height={height} onTap={readAt} />}
      </div>
      <p class="unseen" role="status">
        {aloud}
      </p>
    </div>
  );
}

const pushWords = (ways: readonly Way[]): string =>
  ways.length === 0 ? '' : ` With Shift they set ${listed(ways.map(({ title }) => inSentence(title)))}.`;

const begin = (all: readonly ReadSeries[], start: Point | undefined): ReadAt | undefined =>
  nearestReading(all, start ?? all[0]?.points[0]?.at ?? { x: 0, y: 0 });

const LINE = LABEL_SIZE + 3;
const PAD = 5;
const OFF = 9;

/** Cross hairs to both axes, a ring on the value, and what it is on a slip of paper beside it. */
function Cross({ reading, of, width }: { reading: Reading; of: ReadSeries; width: number }): JSX.Element {
  const { x, y } = reading.at;
  const lines = of.name === '' ? reading.lines : [of.name, ...reading.lines];
  const wide = Math.max(...lines.map((line) => textWidth(line, LABEL_SIZE))) + 2 * PAD;
  const high = lines.length * LINE + PAD;
  const beside = x + OFF + wide <= width ? x + OFF : x - OFF - wide;
  const left = Math.min(Math.max(beside, 1), Math.max(1, width - wide - 1));
  const top = y - OFF - high >= 0 ? y - OFF - high : y + OFF;
  const hair = { stroke: ink('ink'), 'stroke-width': 0.9, 'stroke-dasharray': '4 2' };
  return (
    <g data-reading={lines.join(', ')} pointer-events="none">
      {of.plot && (
        <>
          <line x1={of.plot.left} x2={x} y1={y} y2={y} {...hair} />
          {!of.upOnly && <line x1={x} x2={x} y1={y} y2={of.plot.bottom} {...hair} />}
        </>
      )}
      <circle cx={x} cy={y} r={4} fill={ink('paper')} stroke={ink('ink')} stroke-width={1.6} />
      <rect x={left} y={top} width={wide} height={high} fill={ink('paper')} stroke={ink('rule')} />
      <text>
        {lines.map((line, k) => (
          <tspan
            key={line}
            x={left + PAD}
            y={top + (k + 1) * LINE - 1}
            font-weight={k === 0 && of.name ? 700 : undefined}
          >
            {line}
          </tspan>
        ))}
      </text>
    </g>
  );
}
