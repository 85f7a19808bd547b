import type { Place, Polyhedron } from '../../physics/index';
import { metres, type Template, type TemplateMark, type TemplatePoint, type TemplateView } from '../template';
import { outlineOf } from './outline';

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const dot = (a: Place, b: Place): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const unit = (a: Place): Place => {
  const size = Math.hypot(...a);
  return [a[0] / size, a[1] / size, a[2] / size];
};

/** Distance between sheets, and the width after which a new row begins, m. */
const GAP = 0.008;
const ROW_WIDTH = 0.16;

/** A tank in its own axes with the inner ends of its tubes, as outlines and as the sheets that it is made of. */
export function tankTemplate(body: Polyhedron, pickup: Place, vent: Place): Template[] {
  const corners = body.flat();
  if (corners.length === 0 || !corners.flat().every(Number.isFinite)) return [];
  const seen = (title: string, see: (p: Place) => TemplatePoint): TemplateView => ({
    title,
    marks: [
      { is: 'cut', points: outlineOf(corners.map(see) as [number, number][]), closed: true },
      ...body.map((face): TemplateMark => ({ is: 'bend', points: face.map(see), closed: true })),
      { is: 'hole', at: see(pickup), diameter: 0 },
      { is: 'hole', at: see(vent), diameter: 0 },
    ],
  });
  const size = (axis: 0 | 1 | 2): number =>
    Math.max(...corners.map((p) => p[axis])) - Math.min(...corners.map((p) => p[axis]));
  return [
    {
      title: 'Tank',
      views: [
        seen('From above, nose to the left', ([x, y]) => [x, y]),
        seen('From inboard, nose to the left', ([x, , z]) => [x, z]),
        seen('From behind', ([, y, z]) => [y, z]),
        { title: 'Its sheets, each flat and seen from outside', marks: sheets(body) },
      ],
      notes: [
        { words: '{} long, {} wide, {} high.', figures: [metres(size(0)), metres(size(1)), metres(size(2))] },
        {
          words:
            'Outlines are those of the fuel: add the thickness of the sheet and flaps for the seams. Crosses: inner ends of pickup and vent.',
        },
        { words: 'Never solder a tank that has held fuel before it is washed out and dry: its vapour explodes.' },
      ],
    },
  ];
}

function sheets(body: Polyhedron): TemplateMark[] {
  const marks: TemplateMark[] = [];
  const corners = body.flat();
  const middle = ([0, 1, 2] as const).map(
    (axis) => corners.reduce((sum, p) => sum + p[axis], 0) / corners.length,
  ) as unknown as Place;
  let [right, down, deepest] = [0, 0, 0];
  for (const [k, face] of body.map((each) => flat(each, middle)).entries()) {
    const [width, height] = extent(face);
    if (right > 0 && right + width > ROW_WIDTH) [right, down, deepest] = [0, down + deepest + GAP, 0];
    const points = face.map(([u, v]): TemplatePoint => [u + right, v - down - height]);
    marks.push({ is: 'cut', points, closed: true });
    marks.push({ is: 'words', at: [right + width / 3, -down - height / 2], words: String(k + 1) });
    right += width + GAP;
    deepest = Math.max(deepest, height);
  }
  return marks;
}

const extent = (points: readonly TemplatePoint[]): TemplatePoint => [
  Math.max(...points.map(([u]) => u)),
  Math.max(...points.map(([, v]) => v)),
];

/** A flat face of a body around `middle` in its own plane, seen from outside, its longest edge level; least coordinates 0. */
function flat(face: readonly Place[], middle: Place): TemplatePoint[] {
  const edges = face.map((corner, k) => minus(face[(k + 1) % face.length]!, corner));
  const longest = edges.reduce((best, edge) => (dot(edge, edge) > dot(best, best) ? edge : best));
  const normal = face.reduce<Place>(
    (sum, corner, k) => {
      const part = cross(minus(corner, face[0]!), minus(face[(k + 1) % face.length]!, face[0]!));
      return [sum[0] + part[0], sum[1] + part[1], sum[2] + part[2]];
    },
    [0, 0, 0],
  );
  const across = unit(longest);
  const outward = dot(normal, minus(face[0]!, middle)) < 0 ? minus([0, 0, 0], normal) : normal;
  const up = cross(unit(outward), across);
  const points = face.map((corner): TemplatePoint => [dot(corner, across), dot(corner, up)]);
  const [left, low] = [Math.min(...points.map(([u]) => u)), Math.min(...points.map(([, v]) => v))];
  return points.map(([u, v]) => [u - left, v - low]);
}
