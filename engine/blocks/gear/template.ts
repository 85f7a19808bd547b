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
        seen('Bent, from the front', ([, y, z]) => [y, z]),
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
            'Bends are shown turned by what the wire turns: 0 is straight on. Wire springs back: bend it further and check it on the views.',
        },
        { words: 'Cut ends of music wire fly and a bent wire whips back: wear goggles, clamp the wire.' },
      ],
    },
  ];
}

/** Height of the marks across the straight wire, and distance of the rows of words below it, m. */
const TICK = 0.005;
const ROW = 0.005;

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
    ...bends.flatMap(({ angle, from, to, turned }, k): TemplateMark[] => [
      across(from, 'bend'),
      across(to, 'bend'),
      {
        ...{ is: 'words', at: [from, -TICK - ROW], words: `Bend ${k + 1}: {}` },
        figures: [radians(angle)],
      },
      {
        ...{ is: 'words', at: [from, -TICK - 2 * ROW], words: 'from {}' },
        figures: [metres(from)],
      },
      { ...{ is: 'words', at: [from, -TICK - 3 * ROW], words: 'to {}' }, figures: [metres(to)] },
      ...(Math.abs(turned) > 0.001
        ? [
            {
              ...{ is: 'words' as const, at: [from, -TICK - 4 * ROW] as const, words: 'turned {}' },
              figures: [radians(turned)],
            },
          ]
        : []),
    ]),
  ];
}
