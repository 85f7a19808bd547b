import { describe, expect, it } from 'vitest';
import { gearTemplate, gearWire } from '../../../engine/blocks/gear/template';
import { guideTemplate } from '../../../engine/blocks/leadouts/template';
import { tankTemplate } from '../../../engine/blocks/tank/template';
import type { Template, TemplateHole, TemplateLine, TemplatePoint } from '../../../engine/blocks/template';
import { cutCorner, type Polyhedron, tankShape } from '../../../engine/physics/index';

const lines = ([template]: readonly Template[], view: number, is: TemplateLine['is']): readonly TemplateLine[] =>
  template!.views[view]!.marks.filter((mark): mark is TemplateLine => mark.is === is);
const holes = ([template]: readonly Template[], view: number): readonly TemplateHole[] =>
  template!.views[view]!.marks.filter((mark): mark is TemplateHole => mark.is === 'hole');
const area = (points: readonly TemplatePoint[]): number =>
  points.reduce((sum, [u, v], k) => {
    const [nextU, nextV] = points[(k + 1) % points.length]!;
    return sum + (u * nextV - nextU * v) / 2;
  }, 0);

/** Six times the volume of the cones from the middle to a face: positive where its corners run counter-clockwise seen from outside. */
const outwardVolume = (face: Polyhedron[number]): number =>
  face.slice(1, -1).reduce((sum, b, k) => {
    const [a, c] = [face[0]!, face[k + 2]!];
    const [x, y, z] = [b[1] * c[2] - b[2] * c[1], b[2] * c[0] - b[0] * c[2], b[0] * c[1] - b[1] * c[0]];
    return sum + a[0] * x + a[1] * y + a[2] * z;
  }, 0);

/** A leg that drops 80 mm straight from a strap 20 mm out of the centreline. */
const placed = (between: number) => ({
  strap: [0.03, 0.02, -0.01] as const,
  leg: {
    ...{ diameter: 0.002, young: 2e11, shear: 8e10, between },
    points: [
      [0, 0, 0],
      [0, 0, -0.08],
    ] as const,
  },
});
const bending = { radius: 0.004, axle: 0.025, legs: 2 } as const;

describe('gear wire', () => {
  it('of one piece runs from axle end to axle end with four square bends', () => {
    const wire = gearWire(placed(0.04), bending)!;
    expect(wire.bends.map(({ angle }) => angle)).toEqual(Array(4).fill(expect.closeTo(Math.PI / 2, 12)));
    expect(wire.length).toBeCloseTo(2 * (0.025 + 0.08) + 0.04 - 4 * (2 - Math.PI / 2) * 0.005, 14);
  });
  it('split is one leg; without an axle it is straight', () => {
    expect(gearWire(placed(0), bending)!.length).toBeCloseTo(0.105 - (2 - Math.PI / 2) * 0.005, 14);
    expect(gearWire(placed(0), { ...bending, axle: 0 })!.length).toBeCloseTo(0.08, 14);
    // Of a wheel on the centreline there is no other leg.
    expect(gearWire(placed(0.04), { ...bending, legs: 1 })!.length).toBeCloseTo(
      gearWire(placed(0), bending)!.length,
      14,
    );
  });
  it('is shown from behind as it stands, and straight with where each bend begins and ends', () => {
    const template = gearTemplate(placed(0.04), bending);
    const [front] = lines(template, 0, 'wire');
    expect(front!.width).toBe(0.002);
    expect(front!.points[0]).toEqual([-0.045, -0.09]);
    expect(front!.points.at(-1)).toEqual([0.045, -0.09]);
    expect(Math.max(...front!.points.map(([, v]) => v))).toBeCloseTo(-0.01, 14);
    const bends = lines(template, 2, 'bend').map(({ points }) => points[0]![0]);
    expect(bends).toHaveLength(8);
    expect(bends[0]).toBeCloseTo(0.02, 14);
    expect(bends[1]).toBeCloseTo(0.02 + (0.005 * Math.PI) / 2, 14);
    expect(lines(template, 2, 'cut')[1]!.points[0]![0]).toBeCloseTo(gearWire(placed(0.04), bending)!.length, 14);
  });
  it('has no template where its runs are too short for its bends, or something has no number', () => {
    expect(gearTemplate(placed(0.04), { ...bending, radius: 0.03 })).toEqual([]);
    const nowhere = placed(0.04);
    expect(gearTemplate({ ...nowhere, strap: [Number.NaN, 0, 0] }, bending)).toEqual([]);
  });
});

describe('leadout guide', () => {
  it('has both holes at their stations', () => {
    const guide = guideTemplate({ x: 0.062, z: 0.004, spacing: 0.022, diameter: 0.003 });
    expect(holes(guide, 0).map(({ at }) => at)).toEqual([
      [expect.closeTo(0.051, 14), 0.004],
      [expect.closeTo(0.073, 14), 0.004],
    ]);
    expect(holes(guide, 0).map(({ diameter }) => diameter)).toEqual([0.003, 0.003]);
  });
  it('has one where both leadouts share it, and none without a number', () => {
    expect(holes(guideTemplate({ x: 0.062, z: 0, spacing: 0, diameter: 0.003 }), 0)).toHaveLength(1);
    expect(guideTemplate({ x: Number.NaN, z: 0, spacing: 0, diameter: 0.003 })).toEqual([]);
  });
});

describe('tank', () => {
  const wedge = tankShape({ length: 0.06, width: 0.03, height: 0.04, edgeHeight: 0.01, taper: 0.02 });
  const template = (body: Polyhedron) => tankTemplate(body, [0.027, 0.013, 0], [0.018, 0.01, 0]);
  it('is seen from where its views say: x aft, y outboard, z up', () => {
    // The way to the viewer is to the right across up: inboard (−y) for the side, aft (x) for the end, up (z) for the plan.
    const titles = template(wedge)[0]!.views.map(({ title }) => title.split(',')[0]);
    expect(titles.slice(0, 3)).toEqual(['From above', 'From inboard', 'From behind']);
  });
  it('is shown from three sides with the inner ends of its tubes', () => {
    const outline = (view: number) => lines(template(wedge), view, 'cut')[0]!.points;
    expect(Math.abs(area(outline(0)))).toBeCloseTo(0.06 * 0.03, 12);
    expect(Math.abs(area(outline(1)))).toBeCloseTo(0.06 * 0.04, 12);
    // From behind: 10 mm of the full height and 20 mm that narrow to a quarter of it.
    expect(Math.abs(area(outline(2)))).toBeCloseTo(0.01 * 0.04 + 0.02 * 0.025, 12);
    expect(holes(template(wedge), 0).map(({ at }) => at)).toEqual([
      [0.027, 0.013],
      [0.018, 0.01],
    ]);
  });
  it('has every sheet in its true size, seen from outside and clear of the others', () => {
    for (const body of [wedge, cutCorner(wedge, [0.03, 0.015, 0.02], [0.01, -0.01, 0.01])]) {
      const sheets = lines(template(body), 3, 'cut').map(({ points }) => points);
      expect(sheets).toHaveLength(body.length);
      for (const [k, face] of body.entries()) {
        const edges = (points: readonly (readonly number[])[]) =>
          points.map((p, n) => Math.hypot(...p.map((value, axis) => value - points[(n + 1) % points.length]![axis]!)));
        for (const [n, edge] of edges(sheets[k]!).entries()) expect(edge).toBeCloseTo(edges(face)[n]!, 12);
        // Its corners run the same way round on paper and seen from outside: it is not mirrored.
        expect(Math.sign(area(sheets[k]!))).toBe(Math.sign(outwardVolume(face)));
      }
      const boxes = sheets.map((points) => ({
        left: Math.min(...points.map(([u]) => u)),
        right: Math.max(...points.map(([u]) => u)),
        low: Math.min(...points.map(([, v]) => v)),
        high: Math.max(...points.map(([, v]) => v)),
      }));
      for (const [k, a] of boxes.entries())
        for (const b of boxes.slice(k + 1))
          expect(a.right < b.left || b.right < a.left || a.high < b.low || b.high < a.low).toBe(true);
    }
  });
});
