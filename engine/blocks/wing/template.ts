import { metres, type Template, type TemplateMark, type TemplatePoint } from '../template';
import { edgeOf, type WingOutline } from './draw';
import { chordAt, LEAST_CHORD, type Rib, type RibChoice, ribsOf, spanOf } from './ribs';

/** Where the camber is greatest, over chord. */
const CAMBER_AT = 0.4;
/** Corners of each side of a section: closer together than a tenth of a millimetre from its curve. */
const CORNERS = 80;
const BEYOND = 0.01;
/** From the lowest of a rib to the words below it, m. */
const LABEL = 0.006;

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

/** Ribs at the root, at both tips and where more are wanted, and the outline of both panels. `camber` over chord. */
export function wingTemplates(w: WingOutline, camber: number, choice: RibChoice): Template[] {
  if (![...Object.values(w).flat(), camber, choice.count].every(Number.isFinite)) return [];
  const ribs = ribsOf(w, choice);
  return [
    {
      title: 'Ribs',
      views: ribs.map((each) => ({ title: each.title, marks: rib(each, w.thickness, camber) })),
      notes: [
        {
          words:
            w.inboardEdge || w.outboardEdge
              ? 'Chords run straight from root to tip; of a panel given by its corners they lie within its outline. Thickness over chord and section are the same all along.'
              : 'Chords run straight from root to tip. Thickness over chord and section are the same all along.',
        },
        ...missing(w, choice),
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

/** Why a rib that one would look for isn't there. */
function missing(w: WingOutline, { count, station }: RibChoice): Template['notes'][number][] {
  const side = station < 0 ? 'inboard' : 'outboard';
  const beyond = Math.abs(station) > spanOf(w, side);
  const pointed = (['inboard', 'outboard'] as const).filter((each) => chordAt(w, each, spanOf(w, each)) < LEAST_CHORD);
  return [
    ...(count < 3 && Number.isNaN(station)
      ? [{ words: 'For more ribs type “Ribs of a panel” or “Station of one more rib” in the wing piece.' }]
      : []),
    ...pointed.map((each) => ({
      words: `The ${each} panel is given by its corners and narrows to less than {} at its tip: no rib stands where it does.`,
      figures: [metres(LEAST_CHORD)],
    })),
    ...(beyond
      ? [
          {
            words: `No rib stands {} from the centreline: the ${side} panel ends at {}.`,
            figures: [Math.abs(station), spanOf(w, side)].map(metres),
          },
        ]
      : []),
  ];
}

/** The outline, the chord line, and below them where it stands and how large it is. */
function rib({ chord, at }: Rib, thickness: number, camber: number): TemplateMark[] {
  const points = ribOutline(chord, thickness, camber);
  const places = at.map(([side]) => `{} ${side}`).join(' and ');
  return [
    { is: 'cut', points, closed: true },
    {
      is: 'centre',
      points: [
        [-BEYOND, 0],
        [chord + BEYOND, 0],
      ],
    },
    {
      ...{ is: 'words', at: [0, Math.min(...points.map(([, v]) => v)) - LABEL] },
      words: `${at.length === 0 ? 'At the centreline' : `From the centreline ${places}`}: chord {}, thickness {}`,
      figures: [...at.map(([, station]) => station), chord, thickness * chord].map(metres),
    },
  ];
}

function panel(w: WingOutline, side: 'inboard' | 'outboard'): Template {
  const edge = edgeOf(w, side);
  const out = side === 'inboard' ? -1 : 1;
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
    notes: [{ words: 'From the centreline {} to the tip, before any rounding.', figures: [metres(spanOf(w, side))] }],
  };
}
