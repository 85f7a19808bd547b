import { metres, type Template, type TemplateLine, type TemplateMark, type TemplatePoint } from '../template';

/** An engine seen from above, m and rad: station aft of the leading edge at the root, outboard of the centreline. */
export interface EngineFromAbove {
  readonly station: number;
  readonly outboard: number;
  /** How far the shaft points outboard. */
  readonly sideThrust: number;
  readonly length: number;
  readonly width: number;
}

/** How far lines reach beyond what they go through, m. */
const BEYOND = 0.012;

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

const shaft = (engine: EngineFromAbove, rear: number): TemplateMark => {
  const at = standing(engine);
  return { is: 'centre', points: [at(-engine.length / 2 - BEYOND, 0), at(rear - engine.station + BEYOND, 0)] };
};
const across = (station: number, engine: EngineFromAbove): TemplateMark => ({
  is: 'centre',
  points: [
    [station, engine.outboard - engine.width / 2 - BEYOND],
    [station, engine.outboard + engine.width / 2 + BEYOND],
  ],
});
const said = (words: string, value: number, engine: EngineFromAbove, row: number): TemplateMark => ({
  ...{
    is: 'words',
    at: [engine.station - engine.length / 2, engine.outboard - engine.width / 2 - BEYOND - row * 0.005],
  },
  ...{ words, figures: [metres(value)] },
});
const STATIONS = {
  words:
    'Stations count aft of the leading edge at the wing root; ahead of it they are negative. Of an engine it is its middle.',
} as const;

const isThere = (engine: EngineFromAbove, ...more: readonly number[]): boolean =>
  [...Object.values(engine), ...more].every(Number.isFinite);

/** Bearers over the lugs, with the engine where it stands and with its backplate at their rear. */
export function bearersTemplate(engine: EngineFromAbove, front: number, rear: number): Template[] {
  if (!isThere(engine, front, rear)) return [];
  const [low, high] = [engine.outboard - engine.width / 2, engine.outboard + engine.width / 2];
  const rearmost = { ...engine, station: rear - engine.length / 2 };
  return [
    {
      title: 'Bearers',
      views: [
        {
          title: 'From above, nose to the left',
          marks: [
            {
              is: 'cut',
              closed: true,
              points: [
                [front, low],
                [rear, low],
                [rear, high],
                [front, high],
              ],
            },
            shaft(engine, rear),
            ...outline(engine, 'cut'),
            ...outline(rearmost, 'bend'),
            said('Bearers from {}', front, engine, 1),
            said('to {}', rear, engine, 2),
            said('Engine at {}', engine.station, engine, 3),
            said('at their rear (dashed) at {}', rearmost.station, engine, 4),
          ],
        },
      ],
      notes: [
        STATIONS,
        {
          words:
            'Outlines are as wide as the engine over its lugs. Lay the engine itself on them for the gap between the bearers and for the holes.',
        },
      ],
    },
  ];
}

/** The engine where it stands and as far aft as the room behind it lets it go. */
export function travelTemplate(engine: EngineFromAbove, rear: number, rearmost: number): Template[] {
  if (!isThere(engine, rear, rearmost)) return [];
  return [
    {
      title: 'Engine travel',
      views: [
        {
          title: 'From above, nose to the left',
          marks: [
            shaft(engine, rear),
            across(rear, engine),
            ...outline(engine, 'cut'),
            ...outline({ ...engine, station: rearmost }, 'bend'),
            said('Rear of the bearers {}', rear, engine, 1),
            said('Engine at {}', engine.station, engine, 2),
            said('at its rearmost (dashed) {}', rearmost, engine, 3),
          ],
        },
      ],
      notes: [STATIONS],
    },
  ];
}
