import { type BentWire, bendWire, type Vector } from '../../physics/index';
import { metres, radians, type Template, type TemplateMark, type TemplatePoint, type TemplateView } from '../template';
import type { PlacedLeg } from './leg';

/** How the wire of a leg is bent. */
export interface Bending {
  /** Inside, m. */
  readonly radius: number;
  /** Of the axle beyond the leg, m. */
  readonly axle: number;
  /** Wheels on the centreline have one leg. */
  readonly legs: 1 | 2;
}

/** Corners of the wire in layout axes, from one end to the other: of both legs where they are one piece. */
function cornersOf({ leg, strap }: PlacedLeg, { axle, legs }: Bending): readonly Vector[] {
  const out = leg.points.map(([x, y, z]): Vector => [strap[0] + x, strap[1] + y, strap[2] + z]);
  const [x, y, z] = out.at(-1)!;
  if (axle > 0) out.push([x, y + axle, z]);
  if (leg.between === 0 || legs === 1) return out;
  return [...out.map(([px, py, pz]): Vector => [px, -py, pz]).reverse(), ...out];
}

/** The wire of the gear, or of one of its legs; undefined where a run is too short for its bends, or there is none. */
export const gearWire = (placed: PlacedLeg, bending: Bending): BentWire | undefined =>
  placed.leg.points.flat().every(Number.isFinite) && placed.strap.every(Number.isFinite)
    ? bendWire(cornersOf(placed, bending), placed.leg.diameter, bending.radius)
    : undefined;

export function gearTemplate(placed: PlacedLeg, bending: Bending): Template[] {
  const wire = gearWire(placed, bending);
  if (!wire) return [];
  const { diameter, between } = placed.leg;
  const single = between === 0 && bending.legs === 2;
  const path = wire.path();
  const seen = (title: string, see: (p: Vector) => TemplatePoint): TemplateView => {
    const points = path.map(see);
    return {
      title,
      marks: [
        { is: 'wire', points, width: diameter },
        { is: 'centre', points },
      ],
    };
  };
  return [
    {
      title: 'Gear wire',
      views: [
        seen('Bent, from behind', ([, y, z]) => [y, z]),
        seen('Bent, from the side, nose to the left', ([x, , z]) => [x, z]),
        { title: 'Straight: where each bend begins and ends', marks: strip(wire, diameter) },
      ],
      notes: [
        {
          words: 'Wire {} thick, cut to {}. Bend it round {} inside.',
          figures: [metres(diameter), metres(wire.length), metres(bending.radius)],
        },
        ...(single ? [{ words: 'Two legs, the other one mirrored. Add what lies in the strap.' }] : []),
        {
          words:
            'The angle of a bend is what the wire turns out of its straight run; turned 180° is a bend the other way. Wire springs back: bend it further and check it on the views.',
        },
        { words: 'Cut ends of music wire fly and a bent wire whips back: wear goggles, clamp the wire.' },
      ],
    },
  ];
}

/** Height of the marks across the straight wire, and distance of the rows of words below it, m. */
const TICK = 0.005;
const ROW = 0.005;
/** Less is no turn, rad. */
const NOT_TURNED = 0.001;

function strip({ length, bends }: BentWire, diameter: number): TemplateMark[] {
  const middle: TemplatePoint[] = [
    [0, 0],
    [length, 0],
  ];
  const across = (at: number, is: 'cut' | 'bend'): TemplateMark => ({
    is,
    points: [
      [at, -TICK],
      [at, TICK],
    ],
  });
  return [
    { is: 'wire', points: middle, width: diameter },
    { is: 'centre', points: middle },
    across(0, 'cut'),
    across(length, 'cut'),
    ...bends.flatMap(({ angle, from, to, turned }, k): TemplateMark[] => {
      const rows = [
        { words: `Bend ${k + 1}: {}`, figures: [radians(angle)] },
        { words: 'from {}', figures: [metres(from)] },
        { words: 'to {}', figures: [metres(to)] },
        ...(Math.abs(turned) > NOT_TURNED ? [{ words: 'turned {}', figures: [radians(turned)] }] : []),
      ];
      // In turn below and above the wire: the next bend may be near.
      const top = k % 2 === 0 ? -TICK - ROW : TICK + rows.length * ROW - ROW / 2;
      return [
        across(from, 'bend'),
        across(to, 'bend'),
        ...rows.map((row, n): TemplateMark => ({ is: 'words', at: [from, top - n * ROW], ...row })),
      ];
    }),
  ];
}
