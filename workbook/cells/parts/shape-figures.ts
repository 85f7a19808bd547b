import type { PartShape } from '../../../engine/index';
import { LABEL_SIZE, type Point } from '../../drawing/index';

/** A size of a shape: between two points of its outline, drawn so far away from them. */
export interface FigureDimension {
  readonly of: string;
  readonly from: Point;
  readonly to: Point;
  readonly away: Point;
}

/** What is written beside a line that ends on the shape. */
export interface FigureLeader {
  readonly of: string;
  readonly from: Point;
  readonly to: Point;
}

/** The picture of a shape, pixels from its upper left corner; not to scale. */
export interface ShapeFigure {
  readonly height: number;
  /** Paths of visible edges, and of hidden ones and centrelines. */
  readonly outlines: readonly string[];
  readonly hidden?: readonly string[];
  readonly dimensions: readonly FigureDimension[];
  readonly leaders?: readonly FigureLeader[];
}

export const FIGURE_WIDTH = 336;

/** Where words stand, and which end of them. */
export interface WordsPlace {
  readonly at: Point;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Above a dimension that lies, beside one that stands. */
export function besideDimension({ from, to, away }: FigureDimension): WordsPlace {
  const at = { x: (from.x + to.x) / 2 + away.x, y: (from.y + to.y) / 2 + away.y };
  if (from.y === to.y) return { at: { x: at.x, y: at.y - 4 }, anchor: 'middle' };
  const side = away.x < 0 ? -1 : 1;
  return { at: { x: at.x + side * 5, y: at.y + LABEL_SIZE / 3 }, anchor: side < 0 ? 'end' : 'start' };
}

/** Behind the end of a leader. */
export const behindLeader = ({ to }: FigureLeader): WordsPlace => ({
  at: { x: to.x + 9, y: to.y + LABEL_SIZE / 3 },
  anchor: 'start',
});

const p = (x: number, y: number): Point => ({ x, y });
const below = (of: string, x1: number, x2: number, y: number): FigureDimension => ({
  of,
  from: p(x1, y),
  to: p(x2, y),
  away: p(0, 24),
});
const right = (of: string, y1: number, y2: number, x: number, out = 12): FigureDimension => ({
  of,
  from: p(x, y1),
  to: p(x, y2),
  away: p(out, 0),
});
const left = (of: string, y1: number, y2: number, x: number): FigureDimension => ({ ...right(of, y1, y2, x, -12) });
const box = (x: number, y: number, width: number, height: number): string => `M${x} ${y}h${width}v${height}h${-width}Z`;
const ring = (x: number, y: number, r: number): string =>
  `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;

/** A sheet seen from above at a slant, as thick as its edge. */
const slab = (layers: number): readonly string[] => [
  'M60 62L90 18H250L220 62Z',
  ...Array.from({ length: layers }, (_, k) => {
    const [y, down] = [62 + 7 * k, 7];
    return `M60 ${y}v${down}H220L250 ${18 + 7 * (k + 1)}v${-down}M220 ${y + down}v${-down}`;
  }),
];

/** Long side at the left, section at the right. */
const SIDE = box(20, 34, 150, 18);

/** Both halves of a section from nose to tail by the four-digit thickness: x along its chord, y up, of a chord of so many pixels. */
function section(x: number, y: number, chord: number, ratio: number): string {
  const stations = [0, 0.0125, 0.05, 0.1, 0.2, 0.3, 0.45, 0.6, 0.75, 0.9, 1];
  const half = (s: number): number =>
    5 * ratio * chord * (0.2969 * Math.sqrt(s) - 0.126 * s - 0.3516 * s ** 2 + 0.2843 * s ** 3 - 0.1015 * s ** 4);
  const at = (s: number, sign: number): string => `${(x + s * chord).toFixed(1)} ${(y - sign * half(s)).toFixed(1)}`;
  const upper = stations.map((s) => at(s, 1));
  const lower = stations.toReversed().map((s) => at(s, -1));
  return `M${[...upper, ...lower].join('L')}Z`;
}

/** One figure a shape; where a size shows is where a ruler would be laid. */
export const SHAPE_FIGURES: Readonly<Record<PartShape, ShapeFigure>> = {
  point: {
    height: 64,
    outlines: [ring(60, 32, 16), 'M60 16V48M44 32H76', 'M60 16A16 16 0 0 1 76 32H60Z', 'M60 48A16 16 0 0 1 44 32H60Z'],
    dimensions: [],
    leaders: [{ of: 'mass', from: p(72, 22), to: p(110, 22) }],
  },
  sheet: {
    height: 92,
    outlines: slab(1),
    dimensions: [],
    leaders: [
      { of: 'area', from: p(150, 40), to: p(168, 40) },
      { of: 'thickness', from: p(130, 66), to: p(150, 84) },
    ],
  },
  stack: {
    height: 92,
    outlines: slab(3),
    dimensions: [],
    leaders: [{ of: 'area', from: p(150, 40), to: p(168, 40) }],
  },
  rod: {
    height: 92,
    outlines: [SIDE, ring(210, 43, 18)],
    hidden: ['M12 43H178', 'M186 43H234M210 19V67'],
    dimensions: [below('length', 20, 170, 52), right('diameter', 25, 61, 210, 28)],
  },
  solid: {
    height: 92,
    outlines: ['M60 40L86 18H200L174 40ZM60 40V74H174V40M174 74L200 52V18'],
    dimensions: [],
    leaders: [{ of: 'volume', from: p(120, 58), to: p(138, 58) }],
  },
  strip: {
    height: 92,
    outlines: [SIDE, box(194, 28, 36, 24)],
    dimensions: [below('length', 20, 170, 52), below('width', 194, 230, 52), right('thickness', 28, 52, 230)],
  },
  tube: {
    height: 104,
    outlines: [SIDE, ring(210, 43, 20), ring(210, 43, 12)],
    hidden: ['M20 39H170M20 47H170', 'M12 43H178'],
    dimensions: [below('length', 20, 170, 52), right('diameter', 23, 63, 210, 28)],
    leaders: [{ of: 'wall', from: p(210, 59), to: p(222, 90) }],
  },
  tapered: {
    height: 152,
    outlines: ['M106 12H228V38L106 60Z', 'M106 112L228 116V124L106 128Z'],
    hidden: ['M98 120H236'],
    dimensions: [
      left('width', 12, 60, 106),
      right('width_end', 12, 38, 228),
      below('length', 106, 228, 60),
      left('thickness', 112, 128, 106),
      right('thickness_end', 116, 124, 228),
    ],
  },
  triangle: {
    height: 92,
    outlines: [SIDE, 'M194 22V52H234Z'],
    dimensions: [below('length', 20, 170, 52), below('width', 194, 234, 52), right('height', 22, 52, 234, 8)],
  },
  ribs: {
    height: 132,
    outlines: [
      section(16, 70, 160, 0.16),
      ring(56, 70, 7),
      ring(92, 70, 7),
      section(206, 70, 110, 0.16),
      ring(234, 70, 5),
    ],
    hidden: ['M8 70H184', 'M198 70H324'],
    dimensions: [
      { ...below('chord', 16, 176, 70), away: p(0, 46) },
      { ...below('tip_chord', 206, 316, 70), away: p(0, 46) },
    ],
    leaders: [
      { of: 'section_thickness', from: p(46, 58), to: p(30, 16) },
      { of: 'cut_away', from: p(92, 63), to: p(116, 40) },
      { of: 'thickness', from: p(240, 62), to: p(230, 16) },
    ],
  },
  core: {
    height: 160,
    outlines: ['M106 12L228 24V74L106 86Z', section(106, 138, 126, 0.16)],
    dimensions: [left('chord', 12, 86, 106), below('length', 106, 228, 86), right('tip_chord', 24, 74, 228)],
    leaders: [
      { of: 'section_thickness', from: p(200, 133), to: p(244, 138) },
      { of: 'cut_away', from: p(130, 48), to: p(144, 48) },
    ],
  },
  run: {
    height: 84,
    outlines: ['M20 30C60 10 80 50 120 30S180 14 220 30'],
    dimensions: [below('length', 20, 220, 38)],
  },
};
