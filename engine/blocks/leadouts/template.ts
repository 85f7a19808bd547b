import { metres, type Template, type TemplateMark, type TemplatePoint } from '../template';

/** Holes of the leadout guide from the side, m: aft of the leading edge at the root, above the reference line. */
export interface GuideHoles {
  readonly x: number;
  readonly z: number;
  readonly spacing: number;
  readonly diameter: number;
}

/** How far lines reach beyond what they go through, m. */
const BEYOND = 0.012;

export function guideTemplate({ x, z, spacing, diameter }: GuideHoles): Template[] {
  if (![x, z, spacing, diameter].every(Number.isFinite)) return [];
  const stations = spacing > 0 ? [x - spacing / 2, x + spacing / 2] : [x];
  const [from, to] = [Math.min(0, stations[0]!) - BEYOND, Math.max(0, stations.at(-1)!) + BEYOND];
  const [low, high] = [Math.min(0, z) - BEYOND, Math.max(0, z) + BEYOND];
  const line = (...points: readonly TemplatePoint[]): TemplateMark => ({ is: 'centre', points });
  return [
    {
      title: 'Leadout guide',
      views: [
        {
          title: 'Holes at the inboard tip, nose to the left',
          marks: [
            line([from, 0], [to, 0]),
            ...(z === 0 ? [] : [line([from, z], [to, z])]),
            line([0, low], [0, high]),
            { is: 'words', at: [0, high + 0.002], words: 'Leading edge at the root' },
            ...stations.flatMap((station, k): TemplateMark[] => [
              line([station, low], [station, high]),
              { is: 'hole', at: [station, z], diameter },
              { is: 'words', at: [station, low - 0.005 * (k + 1)], words: '{} aft', figures: [metres(station)] },
            ]),
          ],
        },
      ],
      notes: [
        { words: 'Holes {} wide, {} apart from middle to middle.', figures: [metres(diameter), metres(spacing)] },
        {
          words:
            'Stations count from the leading edge at the wing root: where the edge leans back, carry that station out to the tip first.',
        },
      ],
    },
  ];
}
