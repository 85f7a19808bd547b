import { metres, type Template, type TemplateLine, type TemplateMark, type TemplatePoint } from '../template';
import { foremostOf, holesOf, type LugHoles } from './lug-holes';

/** An engine seen from above, m and rad: station aft of the leading edge at the root, outboard of the centreline. */
export interface EngineFromAbove {
  readonly station: number;
  readonly outboard: number;
  /** How far the shaft points outboard. */
  readonly sideThrust: number;
  readonly length: number;
  readonly width: number;
}

/** What an engine stands on, m. */
export interface Bearers {
  readonly front: number;
  readonly rear: number;
  /** Between their inner sides; NaN where it isn't known. */
  readonly gap: number;
  readonly holes: LugHoles;
  /** Station of the engine that the room behind it leaves; NaN where no piece tells it. */
  readonly rearmost: number;
}

/** How far lines reach beyond what they go through, and the rows of words below the bearers, m. */
const BEYOND = 0.012;
const ROW = 0.005;
const TICK = 0.0015;

/** Places of an engine in its own axes (aft of its middle, outboard of its shaft) as it stands. */
const standing =
  ({ station, outboard, sideThrust }: EngineFromAbove) =>
  (aft: number, out: number): TemplatePoint => [
    station + aft * Math.cos(sideThrust) + out * Math.sin(sideThrust),
    outboard - aft * Math.sin(sideThrust) + out * Math.cos(sideThrust),
  ];

/** From backplate to drive washer and over the lugs, with the middle at its station. */
function outline(engine: EngineFromAbove, is: TemplateLine['is']): TemplateMark[] {
  const at = standing(engine);
  const [half, side] = [engine.length / 2, engine.width / 2];
  return [
    { is, points: [at(-half, -side), at(half, -side), at(half, side), at(-half, side)], closed: true },
    { is: 'hole', at: at(0, 0), diameter: 0 },
  ];
}

const box = (front: number, rear: number, low: number, high: number): TemplateMark => ({
  ...{ is: 'cut', closed: true },
  points: [
    [front, low],
    [rear, low],
    [rear, high],
    [front, high],
  ],
});

/** How far the middle of the engine goes: a line with its ends marked and its length told behind it. */
function travel(engine: EngineFromAbove, to: number, words: string, row: number): TemplateMark[] {
  const level = engine.outboard + engine.width / 2 + BEYOND + row * ROW;
  const tick = (x: number): TemplateMark => ({
    ...{ is: 'thin' },
    points: [
      [x, level - TICK],
      [x, level + TICK],
    ],
  });
  const from = engine.station;
  return [
    {
      ...{ is: 'thin' },
      points: [
        [from, level],
        [to, level],
      ],
    },
    tick(from),
    tick(to),
    {
      ...{ is: 'words', at: [Math.max(from, to) + TICK, level - TICK] },
      ...{ words, figures: [metres(Math.abs(to - from))] },
    },
  ];
}

const STATIONS = {
  words:
    'Stations count aft of the leading edge at the wing root; ahead of it they are negative. Of an engine it is its middle.',
} as const;

/**
 * Bearers with the gap between them, the engine with its lug holes where it stands, and how far aft and forward it goes: aft until its
 * backplate is at their rear or as the room behind it allows, forward until its holes are as near to their front as they may be.
 */
export function bearersTemplate(engine: EngineFromAbove, bearers: Bearers): Template[] {
  const { front, rear, gap } = bearers;
  if (![...Object.values(engine), front, rear].every(Number.isFinite)) return [];
  const { station, outboard, width, length } = engine;
  const untold = Number.isNaN(bearers.rearmost);
  const rearmost = untold ? rear - length / 2 : bearers.rearmost;
  const holes = holesOf(bearers.holes).map(([aft, out]) => standing(engine)(aft, out));
  const foremost = foremostOf(holes, bearers.holes, station, front);
  const parted = gap < width;
  const rows = [
    { words: 'Bearers from {} to {}', figures: [front, rear] },
    ...(parted ? [{ words: 'Gap between them {}, {} over both', figures: [gap, width] }] : []),
    { words: 'Engine at {}, dashed at {} where it is furthest aft', figures: [station, rearmost] },
    ...(Number.isFinite(foremost) ? [{ words: 'and at {} where it is furthest forward', figures: [foremost] }] : []),
    ...(holes.length > 0
      ? [
          {
            words: 'Lug holes {} apart fore and aft, {} across, {} wide',
            figures: [bearers.holes.along, bearers.holes.across, bearers.holes.diameter],
          },
        ]
      : []),
  ];
  const left = Math.min(front, station - length / 2);
  return [
    {
      title: 'Bearers with engine travel',
      views: [
        {
          title: 'From above, nose to the left',
          marks: [
            ...(parted
              ? [
                  box(front, rear, outboard - width / 2, outboard - gap / 2),
                  box(front, rear, outboard + gap / 2, outboard + width / 2),
                ]
              : [box(front, rear, outboard - width / 2, outboard + width / 2)]),
            {
              is: 'centre',
              points: [
                standing(engine)(-length / 2 - BEYOND, 0),
                standing(engine)(Math.max(rear - station, length / 2) + BEYOND, 0),
              ],
            },
            ...outline(engine, 'cut'),
            ...holes.map((at): TemplateMark => ({ is: 'hole', at, diameter: bearers.holes.diameter })),
            ...outline({ ...engine, station: rearmost }, 'bend'),
            ...travel(engine, rearmost, rearmost < station ? 'It stands {} too far aft' : 'Aft {}', 1),
            ...(Number.isFinite(foremost)
              ? [
                  ...outline({ ...engine, station: foremost }, 'bend'),
                  ...travel(engine, foremost, foremost > station ? 'It stands {} too far forward' : 'Forward {}', 3),
                ]
              : []),
            ...rows.map(
              ({ words, figures }, k): TemplateMark => ({
                ...{ is: 'words', at: [left, outboard - width / 2 - BEYOND - (k + 1) * ROW] },
                ...{ words, figures: figures.map(metres) },
              }),
            ),
          ],
        },
      ],
      notes: [STATIONS, ...notesOf(engine, bearers, holes.length > 0, untold)],
    },
  ];
}

function notesOf(engine: EngineFromAbove, { gap, holes }: Bearers, drilled: boolean, untold: boolean) {
  const notes: Template['notes'][number][] = [
    {
      words:
        'Both bearers together are as wide as the engine over its lugs. Lay the engine itself on them before you cut or drill.',
    },
    {
      words: untold
        ? 'Aft it goes until its backplate is at the rear of the bearers. The piece “Room along the body” tells what needle valve, tube and tank leave of that.'
        : 'Aft it goes until its backplate is at the rear of the bearers, or as far as needle valve, tube and tank leave room.',
    },
  ];
  if (Number.isNaN(gap)) {
    notes.push({
      words: 'Type “Gap between the bearers” in the engine piece to have two bearers with the crankcase between.',
    });
  } else if (gap >= engine.width) {
    notes.push({
      words: 'A gap of {} leaves no wood under an engine that is {} over its lugs: type a gap below that.',
      figures: [metres(gap), metres(engine.width)],
    });
  }
  if (!drilled) {
    notes.push({
      words:
        'Type how far the lug holes are apart, fore and aft and across, and their diameter in the engine piece to have them here, and how far forward the engine goes.',
    });
    return notes;
  }
  notes.push({
    words:
      'Forward it goes until as much wood as a hole is wide is left ahead of the front holes: common practice, no source.',
  });
  if (holes.across - holes.diameter < gap || holes.across + holes.diameter > engine.width) {
    notes.push({
      words:
        'Holes {} apart across do not lie on the bearers with their whole width: measure gap, lugs and holes again.',
      figures: [metres(holes.across)],
    });
  }
  return notes;
}
