import { formatNumber } from '../../engine/index';
import {
  type Box,
  LABEL_SIZE,
  type LabelWish,
  type PlacedLabel,
  type Point,
  placeLabels,
  type Segment,
  segmentsOf,
  textWidth,
} from '../drawing/index';
import { type Joints, type Positions, upLineOf } from './linkage-joints';

/** A line of the picture, in pixels. */
export interface Stroke {
  readonly key: string;
  readonly kind: 'outline' | 'thin' | 'hidden' | 'ghost';
  readonly points: readonly Point[];
  readonly closed?: boolean;
}
interface Dot {
  readonly key: string;
  readonly at: Point;
  readonly radius: number;
  readonly filled: boolean;
}
export interface Label {
  readonly text: string;
  readonly bold: boolean;
  readonly placed: PlacedLabel;
}
export interface LinkagePage {
  readonly width: number;
  readonly height: number;
  readonly strokes: readonly Stroke[];
  readonly dots: readonly Dot[];
  readonly labels: readonly Label[];
  readonly captions: readonly { readonly text: string; readonly at: Point }[];
}

/** Lengths of what is cut off, and room around, m. */
const STUB = 0.03;
const ROOM = 0.006;
/** Pixels: most of a metre, gaps and edges; from this width on both views stand side by side. */
const MOST_SCALE = 2600;
const EDGE = 62;
const GAP = 26;
const CAPTION = 16;
const WIDE = 560;
const LINE = LABEL_SIZE + 2;

const box = (points: readonly Point[]): Box => ({
  left: Math.min(...points.map((p) => p.x)) - ROOM,
  right: Math.max(...points.map((p) => p.x)) + ROOM,
  top: Math.min(...points.map((p) => p.y)) - ROOM,
  bottom: Math.max(...points.map((p) => p.y)) + ROOM,
});

/** From above, metres: nose left, the pilot's side below. */
const above = (x: number, y: number): Point => ({ x, y: -y });
/** From the pilot's side: nose left, up upward. */
const beside = (x: number, z: number): Point => ({ x, y: -z });

/** A point on the way from a to b, a length from a. */
function toward(a: Point, b: Point, length: number): Point {
  const way = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  return { x: a.x + ((b.x - a.x) * length) / way, y: a.y + ((b.y - a.y) * length) / way };
}

/** Full line with the handle upright, dashes for full up, dashes and dots for full down. */
const LINES = { neutral: 'outline', up: 'hidden', down: 'ghost' } as const;

interface Wish {
  readonly key: string;
  readonly text: string;
  readonly at: Point;
  readonly bold?: boolean;
}
interface View {
  readonly strokes: readonly Stroke[];
  readonly dots: readonly Dot[];
  readonly wishes: readonly Wish[];
}

/** Whole tenths of a degree: more no protractor shows. */
const degrees = (angle: number): string => `${formatNumber(Math.round((Math.abs(angle) * 1800) / Math.PI) / 10)}°`;

/** Elevator as it is said: 12° up, 3° down, neutral. */
function elevatorWords(angle: number): string {
  const shown = degrees(angle);
  return shown === '0°' ? '0°' : `${shown} ${angle > 0 ? 'up' : 'down'}`;
}

function bellcrankView(positions: Positions): View {
  const strokes: Stroke[] = [];
  const holes = (j: Joints) => ({
    front: above(j.front_x, j.front_y),
    rear: above(j.rear_x, j.rear_y),
    crank: above(j.crank_x, j.crank_y),
  });
  for (const [name, j] of [
    ['down', positions.down],
    ['up', positions.up],
    ['neutral', positions.neutral],
  ] as const) {
    const { front, rear, crank } = holes(j);
    const solid = name === 'neutral';
    const kind = LINES[name];
    strokes.push({ key: `bellcrank ${name}`, kind, points: [front, crank, rear], closed: true });
    const ends = [
      ['front leadout', front, above(j.front_guide_x, j.guide_y)],
      ['rear leadout', rear, above(j.rear_guide_x, j.guide_y)],
      ['pushrod', crank, above(j.horn_x, j.horn_y)],
    ] as const;
    if (solid) {
      for (const [key, from, to] of ends) {
        strokes.push({ key, kind: 'thin', points: [from, toward(from, to, key === 'pushrod' ? 2 * STUB : STUB)] });
      }
    }
  }
  const { neutral, up, down } = positions;
  const here = holes(neutral);
  const line = upLineOf(positions);
  const leadout = (name: 'front' | 'rear', at: Point, guideX: number): Wish => ({
    key: name,
    text: `${name} leadout, ${name === line ? 'up' : 'down'}`,
    at: toward(at, above(guideX, neutral.guide_y), STUB),
    bold: name === line,
  });
  return {
    strokes,
    dots: [
      { key: 'pivot', at: above(neutral.pivot_x, neutral.pivot_y), radius: 4, filled: true },
      ...Object.entries(here).map(([key, at]) => ({ key, at, radius: 2.5, filled: false })),
    ],
    wishes: [
      leadout('front', here.front, neutral.front_guide_x),
      leadout('rear', here.rear, neutral.rear_guide_x),
      { key: 'crank up', text: `full up, turned ${degrees(up.bellcrank)}`, at: holes(up).crank },
      { key: 'crank down', text: `full down, turned ${degrees(down.bellcrank)}`, at: holes(down).crank },
      { key: 'pivot', text: 'pivot', at: above(neutral.pivot_x, neutral.pivot_y) },
      { key: 'pushrod', text: 'pushrod', at: toward(here.crank, above(neutral.horn_x, neutral.horn_y), 1.4 * STUB) },
    ],
  };
}

function hornView({ up, down, neutral }: Positions): View {
  const strokes: Stroke[] = [];
  const hinge = beside(neutral.hinge_x, neutral.hinge_z);
  strokes.push({ key: 'stabiliser', kind: 'outline', points: [{ x: hinge.x - STUB, y: hinge.y }, hinge] });
  for (const [name, j] of [
    ['down', down],
    ['up', up],
    ['neutral', neutral],
  ] as const) {
    const horn = beside(j.horn_x, j.horn_z);
    const kind = LINES[name];
    strokes.push({ key: `elevator ${name}`, kind, points: [horn, hinge, beside(j.edge_x, j.edge_z)] });
    const rod = toward(horn, beside(j.crank_x, j.crank_z), 1.6 * STUB);
    if (name === 'neutral') strokes.push({ key: 'rod', kind: 'thin', points: [horn, rod] });
  }
  const horn = beside(neutral.horn_x, neutral.horn_z);
  const edge = (j: Joints): Point => beside(j.edge_x, j.edge_z);
  return {
    strokes,
    dots: [
      { key: 'hinge', at: hinge, radius: 4, filled: true },
      { key: 'horn', at: horn, radius: 2.5, filled: false },
    ],
    wishes: [
      { key: 'elevator up', text: elevatorWords(up.elevator), at: edge(up), bold: true },
      { key: 'elevator down', text: elevatorWords(down.elevator), at: edge(down), bold: true },
      { key: 'elevator', text: `upright ${elevatorWords(neutral.elevator)}`, at: edge(neutral), bold: true },
      { key: 'hinge', text: 'hinge', at: hinge },
      { key: 'horn', text: 'horn', at: horn },
      { key: 'rod', text: 'pushrod', at: toward(horn, beside(neutral.crank_x, neutral.crank_z), STUB) },
    ],
  };
}

const pointsOf = (view: View): Point[] => [...view.strokes.flatMap((s) => s.points), ...view.dots.map((d) => d.at)];

/** Moves a view from metres to its place on the page and labels it. */
function place(
  view: View,
  extent: Box,
  scale: number,
  at: Point,
  room: Box,
): Omit<LinkagePage, 'width' | 'height' | 'captions'> {
  const put = (p: Point): Point => ({ x: at.x + (p.x - extent.left) * scale, y: at.y + (p.y - extent.top) * scale });
  const strokes = view.strokes.map((s) => ({ ...s, points: s.points.map(put) }));
  const dots = view.dots.map((d) => ({ ...d, at: put(d.at) }));
  const wishes = view.wishes.map(
    (wish): LabelWish => ({
      key: wish.key,
      at: put(wish.at),
      settings: [{ width: textWidth(wish.text, LABEL_SIZE) + 4, height: LINE }],
      clear: dots.find((dot) => dot.key === wish.key)?.radius ?? 2,
    }),
  );
  const segments: Segment[] = strokes.flatMap((s) => segmentsOf(s.points, s.closed ?? false));
  const taken = dots.map(({ at: { x, y }, radius }) => ({
    ...{ left: x - radius, right: x + radius },
    ...{ top: y - radius, bottom: y + radius },
  }));
  const placed = placeLabels(wishes, { frame: room, taken, strokes: segments });
  const labels = placed.map((each) => {
    const { text, bold = false } = view.wishes.find(({ key }) => key === each.key)!;
    return { text, bold, placed: each };
  });
  return { strokes, dots, labels };
}

/** Bellcrank from above and horn from the side at one scale, beside each other or one over the other. */
export function layOutLinkage(positions: Positions, width: number): LinkagePage {
  const views = [bellcrankView(positions), hornView(positions)] as const;
  const extents = views.map((view) => box(pointsOf(view))) as [Box, Box];
  const [across, down] = [
    extents.map((e) => e.right - e.left) as [number, number],
    extents.map((e) => e.bottom - e.top) as [number, number],
  ];
  const wide = width >= WIDE;
  const free = wide ? (width - 4 * EDGE - GAP) / (across[0] + across[1]) : (width - 2 * EDGE) / Math.max(...across);
  const scale = Math.min(MOST_SCALE, Math.max(free, 200));
  const heights = down.map((d) => d * scale + CAPTION + 2 * GAP) as [number, number];
  const split = wide ? 2 * EDGE + across[0] * scale + (width - 4 * EDGE - (across[0] + across[1]) * scale) / 2 : width;
  const rooms: [Box, Box] = wide
    ? [
        { left: 0, right: split, top: CAPTION, bottom: Math.max(...heights) },
        { left: split, right: width, top: CAPTION, bottom: Math.max(...heights) },
      ]
    : [
        { left: 0, right: width, top: CAPTION, bottom: heights[0] },
        { left: 0, right: width, top: heights[0] + CAPTION, bottom: heights[0] + heights[1] },
      ];
  const placed = views.map((view, k) => {
    const room = rooms[k as 0 | 1];
    const middle = (room.left + room.right) / 2 - (across[k as 0 | 1] * scale) / 2;
    const top = (room.top + room.bottom) / 2 - (down[k as 0 | 1] * scale) / 2;
    return place(view, extents[k as 0 | 1], scale, { x: middle, y: top }, room);
  });
  return {
    width,
    height: Math.ceil(rooms[1].bottom),
    strokes: placed.flatMap(({ strokes }) => strokes),
    dots: placed.flatMap(({ dots }) => dots),
    labels: placed.flatMap(({ labels }) => labels),
    captions: ['bellcrank from above, nose left', 'horn from the pilot’s side, nose left'].map((text, k) => ({
      text,
      at: { x: rooms[k as 0 | 1].left + 2, y: rooms[k as 0 | 1].top - 4 },
    })),
  };
}

/** The picture in words. */
export function linkageWords(title: string, positions: Positions): string {
  const { up, down, neutral } = positions;
  const line = upLineOf(positions);
  return [
    `${title}: the bellcrank from above and the horn from the pilot’s side.`,
    `Full up turns the bellcrank by ${degrees(up.bellcrank)}, pulls the ${line} leadout in and sets the elevator ${elevatorWords(up.elevator)};`,
    `full down turns it by ${degrees(down.bellcrank)} the other way and sets the elevator ${elevatorWords(down.elevator)}.`,
    `With the handle upright the elevator stands at ${elevatorWords(neutral.elevator)}.`,
  ].join(' ');
}
