import { formatNumber } from '../../../engine/index';
import { type Box, LABEL_SIZE, overlaps, type Point, segmentsOf, textWidth, wrapText } from '../../drawing/index';
import type { Panel, Spot } from '../frame/family';
import { type Grid, type GridLine, gridValues } from '../frame/grid';
import { limitWords, zonesOf } from '../frame/limits';
import {
  type DrawnPanel,
  type Heights,
  type Laid,
  leftRoom,
  plotHeight,
  TITLE_LINE,
  ticksUp,
  titleAt,
} from '../frame/panels';
import type { SweepChartProps } from '../frame/props';
import { ranged } from '../frame/ranged';
import { exact, linear } from '../frame/scales';
import { around, markedOn, NOW_RADIUS, placeSpots, placesOf } from '../frame/spots';
import type { Range } from '../frame/y-range';
import { wordsHeight } from '../frame/zone-words';
import { placeZones } from '../frame/zones';

/** One line of the carpet's own grid: one axis stays, the other runs. */
export interface CarpetLine {
  readonly key: string;
  readonly family: 'across' | 'along';
  readonly text: string;
  readonly points: readonly Point[];
  /** Place of its name. */
  readonly label: Box | undefined;
}
export interface CarpetPanel extends DrawnPanel {
  readonly panel: Panel;
  readonly lines: readonly CarpetLine[];
  readonly ghost: readonly Point[];
  /** placed[row][column], y NaN where there is no answer. */
  readonly placed: readonly (readonly Point[])[];
  readonly values: readonly (readonly number[])[];
}
export interface CarpetLayout extends Laid<CarpetPanel> {
  /** How the second axis is shifted against the first. */
  readonly shift: number;
}

const KEY_LINES = 2;
const HEIGHTS: Heights = { wide: [290, 220, 190], narrow: [250, 210, 180] };
const TICK_EVERY = 36;
const SHIFT = 0.62;
/** Every value has a line of its own up to this number, beyond it five spread evenly: those are in the coarse lattice too. */
const MOST_LINES = 7;
const LINES = 5;
const PANEL_GAP = 16;
/** Room left and right of the carpet for the names at its corners. */
const SIDE = 46;
const WORDS_SHARE = 0.6;
const AIR = 0.06;
/** From the end of a line to its name. */
const NAME_OFF = 5;
const NAME_UNDER = 9;

/** Lays a carpet out: both axes run along a slanted abscissa of their own, the result upward. */
export function layOutCarpet(grid: Grid, props: SweepChartProps, width: number, before?: CarpetLayout): CarpetLayout {
  const { family, columns, rows } = grid;
  const height = plotHeight(HEIGHTS, width, family.panels.length);
  const values = family.panels.map((panel) => gridValues(grid, panel, props));
  const held = props.moving ? before?.shift : undefined;
  const shift = held ?? (values[0] && slopesAgree(values[0]) ? -SHIFT : SHIFT);
  const u = share(columns);
  const v = share(rows);
  const along = (x: number, y: number): number => u(x) + shift * v(y);
  const axes = family.panels.map((panel, n) =>
    ranged({
      numbers: [
        ...values[n]!.flat(),
        ...panel.ghost.map((spot) => spot.y),
        panel.now?.y ?? Number.NaN,
        panel.baseline?.y ?? Number.NaN,
        ...panel.others.map(({ spot }) => spot?.y ?? Number.NaN),
      ],
      zones: zonesOf(panel, props.checks, props.names, props.values),
      words: (zone) => wrapText(limitWords(zone), LABEL_SIZE, width * WORDS_SHARE),
      room: (lines) => wordsHeight(lines.length) / height,
      held: props.moving ? before?.panels[n]?.up.range : undefined,
      aired,
    }),
  );
  const ticks = axes.map(({ range }) => ticksUp(range, height, TICK_EVERY));
  const left = leftRoom(ticks);
  const right = width - 6;
  const x = linear([Math.min(0, shift), 1 + Math.max(0, shift)], left + SIDE, right - SIDE);

  let top = KEY_LINES * TITLE_LINE + 4;
  const panels = family.panels.map((panel, n): CarpetPanel => {
    const axis = axes[n]!;
    const { title, plotTop } = titleAt([panel.title], top, width);
    const box: Box = { left, right, top: plotTop, bottom: plotTop + height };
    top = box.bottom + PANEL_GAP;
    const y = linear(axis.range, box.bottom, box.top);
    const placed = rows.map((row, r) =>
      columns.map((column, c) => ({ x: x(along(column.shown, row.shown)), y: y(values[n]![r]![c]!) })),
    );
    const bare = carpetLines(grid, placed);
    const strokes = bare.flatMap((line) => strokesOf(line.points));
    const slanted = (spot: Spot, at: Spot | undefined): Spot => ({ x: at ? along(at.x, at.y) : Number.NaN, y: spot.y });
    const marked = markedOn(
      {
        ...panel,
        now: panel.now && grid.now && slanted(panel.now, grid.now),
        baseline: panel.baseline && grid.baseline && slanted(panel.baseline, grid.baseline),
        others: panel.others.map(({ spot, ...other }, k) => ({
          ...other,
          spot: spot && grid.others[k] && slanted(spot, grid.others[k]),
        })),
      },
      (spot) => ({ x: x(spot.x), y: y(spot.y) }),
    );
    const marks = marked.map(({ at }) => around(at, NOW_RADIUS));
    const labels = namesAtEnds(bare);
    const ghost = panel.ghost.map((spot) => ({
      x: grid.baseline ? x(along(spot.x, grid.baseline.y)) : Number.NaN,
      y: y(spot.y),
    }));
    return {
      ...{ key: panel.path, panel, title, box, ghost, placed, values: values[n]!, outside: axis.outside },
      across: { range: [0, 1] },
      up: { range: axis.range, ticks: ticks[n]!, grid: true },
      zones: placeZones(axis, { along: 'up', box, at: y, strokes, taken: [...labels.values(), ...marks] }),
      lines: bare.map(({ end: _, inner: _i, ...line }) => ({ ...line, label: labels.get(line.key) })),
      spots: placeSpots(marked, box, [...labels.values()], strokes, placesOf(before?.panels[n]?.spots)),
    };
  });
  return { width, height: panels.at(-1)!.box.bottom + 10, shift, panels };
}

/** With room above and below for the names at the ends of the grid's lines. */
const aired = ([low, high]: Range): Range => [low - AIR * (high - low), high + AIR * (high - low)];

/** Place of a value among those of its axis, 0 to 1. */
function share(list: readonly GridLine[]) {
  const shown = list.map((each) => exact(each.shown));
  const low = Math.min(...shown);
  const span = Math.max(...shown) - low || 1;
  return (value: number): number => (value - low) / span;
}

/** Whether the result rises, or falls, along both axes: then they are shifted against each other, so that the carpet opens. */
function slopesAgree(values: readonly (readonly number[])[]): boolean {
  let across = 0;
  let along = 0;
  for (const [r, row] of values.entries()) {
    for (const [c, value] of row.entries()) {
      across += (row[c + 1] ?? Number.NaN) - value || 0;
      along += (values[r + 1]?.[c] ?? Number.NaN) - value || 0;
    }
  }
  return across * along > 0;
}

function carpetLines({ columns, rows }: Grid, placed: readonly (readonly Point[])[]): BareLine[] {
  const column = (c: number): Point[] => placed.map((row) => row[c]!);
  return [
    ...chosen(rows).map((r) => lineOf('along', rows[r]!, placed[r]!, true)),
    ...chosen(columns).map((c) => lineOf('across', columns[c]!, column(c), false)),
  ];
}

type BareLine = Omit<CarpetLine, 'label'> & { readonly end: Point | undefined; readonly inner: Point | undefined };

function lineOf(
  family: CarpetLine['family'],
  { label, shown, option, index }: GridLine,
  points: readonly Point[],
  last: boolean,
): BareLine {
  const answered = points.filter((p) => !Number.isNaN(p.y));
  const [end, inner] = last ? [answered.at(-1), answered.at(-2)] : answered;
  return { key: `${family} ${index}`, family, text: option ? label : formatNumber(shown), points, end, inner };
}

/** Each name beyond the end of its line, the outermost of a family first; one that would meet another is left out. */
function namesAtEnds(lines: readonly BareLine[]): Map<string, Box> {
  const names = new Map<string, Box>();
  for (const family of ['along', 'across'] as const) {
    const own = lines.filter((line) => line.family === family);
    const [first, ...rest] = own;
    for (const line of [first, rest.at(-1), ...rest.slice(0, -1)]) {
      const box = line && nameBox(line);
      if (box && ![...names.values()].some((other) => overlaps(other, box))) names.set(line.key, box);
    }
  }
  return names;
}

/** Names of the second axis stand beside its lines' ends, those of the first wholly above or below. */
function nameBox({ family, end, inner, text }: BareLine): Box | undefined {
  if (!end) return undefined;
  const dx = inner ? end.x - inner.x : 1;
  const dy = inner ? end.y - inner.y : 0;
  const long = Math.hypot(dx, dy) || 1;
  const half = { x: textWidth(text, LABEL_SIZE) / 2 + 2, y: LABEL_SIZE / 2 + 1 };
  const x = end.x + (dx / long) * (half.x + NAME_OFF);
  const away = family === 'across' ? Math.sign(dy) || 1 : dy / long;
  const y = end.y + away * (half.y + (family === 'across' ? NAME_UNDER : NAME_OFF));
  return { left: x - half.x, right: x + half.x, top: y - half.y, bottom: y + half.y };
}

/** Which lines of one axis are drawn, as places in the list. */
function chosen(list: readonly GridLine[]): number[] {
  if (list.length <= MOST_LINES) return [...list.keys()];
  const last = list.length - 1;
  return Array.from({ length: LINES }, (_, k) => Math.round((k * last) / (LINES - 1)));
}

const strokesOf = (points: readonly Point[]) => segmentsOf(points, false).filter((s) => !Number.isNaN(s.y0 + s.y1));
