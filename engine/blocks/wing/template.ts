import { metres, type Template, type TemplateMark, type TemplatePoint } from '../template';
import { edgeOf, type WingOutline } from './draw';

/** Where the camber is greatest, over chord. */
const CAMBER_AT = 0.4;
/** Corners of each side of a section: closer together than a tenth of a millimetre from its curve. */
const CORNERS = 80;
const BEYOND = 0.01;

/**
 * Outline of a section of the NACA four-digit family, m, from its leading edge aft and up:
 * half thickness 5 t (0.2969 √x − 0.126 x − 0.3516 x² + 0.2843 x³ − 0.1015 x⁴) across a mean line of two parabolas.
 * Source: E. N. Jacobs, K. E. Ward, R. M. Pinkerton, NACA Report 460 (1933).
 */
export function ribOutline(chord: number, thickness: number, camber: number): TemplatePoint[] {
  const corner = (share: number, side: 1 | -1): TemplatePoint => {
    // Close together at the leading edge.
    const x = (1 - Math.cos(Math.PI * share)) / 2;
    const half =
      5 * thickness * (0.2969 * Math.sqrt(x) - 0.126 * x - 0.3516 * x ** 2 + 0.2843 * x ** 3 - 0.1015 * x ** 4);
    const p = CAMBER_AT;
    const scale = x < p ? camber / p ** 2 : camber / (1 - p) ** 2;
    const mean = x < p ? scale * (2 * p * x - x * x) : scale * (1 - 2 * p + 2 * p * x - x * x);
    const slope = Math.atan(2 * scale * (p - x));
    return [chord * (x - side * half * Math.sin(slope)), chord * (mean + side * half * Math.cos(slope))];
  };
  const over = Array.from({ length: CORNERS + 1 }, (_, k) => corner(1 - k / CORNERS, 1));
  const under = Array.from({ length: CORNERS }, (_, k) => corner((k + 1) / CORNERS, -1));
  return [...over, ...under];
}

interface NamedChord {
  readonly title: string;
  readonly chord: number;
}

/** Ribs at the root and at both tips, and the outline of both panels. `camber` over chord. */
export function wingTemplates(w: WingOutline, camber: number): Template[] {
  if (![...Object.values(w).flat(), camber].every(Number.isFinite)) return [];
  const tips = tipChords(w);
  const chords = [{ title: 'Rib at the root', chord: w.rootChord }, ...tips];
  return [
    {
      title: 'Ribs',
      views: chords.map(({ title, chord }) => ({ title, marks: rib(chord, w.thickness, camber) })),
      notes: [
        {
          words:
            tips.length === 0
              ? 'Root chord {}. Panels given by their corners have no tip rib.'
              : 'Root chord {}, tip chords {} inboard and {} outboard.',
          figures: [w.rootChord, ...(tips.length === 0 ? [] : [w.inboardTipChord, w.outboardTipChord])].map(metres),
        },
        {
          words:
            'Outlines are those of the finished wing: what is cut is less by sheeting and covering, with slots for your spars.',
        },
        {
          words:
            'The section is the four-digit one of this picture and thickness. With another section of your own lay its outline on the chord line.',
        },
      ],
    },
    ...(['inboard', 'outboard'] as const).map((side) => panel(w, side)),
  ];
}

/** A tip that is given by corners has no straight end to stand a rib on. */
function tipChords(w: WingOutline): readonly NamedChord[] {
  if (w.inboardEdge || w.outboardEdge) return [];
  if (w.inboardTipChord === w.outboardTipChord) return [{ title: 'Rib at the tips', chord: w.inboardTipChord }];
  return [
    { title: 'Rib at the inboard tip', chord: w.inboardTipChord },
    { title: 'Rib at the outboard tip', chord: w.outboardTipChord },
  ];
}

const rib = (chord: number, thickness: number, camber: number): TemplateMark[] => [
  { is: 'cut', points: ribOutline(chord, thickness, camber), closed: true },
  {
    is: 'centre',
    points: [
      [-BEYOND, 0],
      [chord + BEYOND, 0],
    ],
  },
];

function panel(w: WingOutline, side: 'inboard' | 'outboard'): Template {
  const edge = edgeOf(w, side);
  const out = side === 'inboard' ? -1 : 1;
  const span = Math.max(...edge.map(([, y]) => y));
  return {
    title: side === 'inboard' ? 'Wing outline, inboard panel' : 'Wing outline, outboard panel',
    views: [
      {
        title: 'From above, nose to the left',
        marks: [
          {
            is: 'cut',
            closed: true,
            points: [[0, 0], ...edge.map(([x, y]): TemplatePoint => [x, out * y]), [w.rootChord, 0]],
          },
        ],
      },
    ],
    notes: [{ words: 'From the centreline {} to the tip, before any rounding.', figures: [metres(span)] }],
  };
}
