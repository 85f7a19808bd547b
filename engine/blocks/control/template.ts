import { metres, type Template, type TemplateMark, type TemplatePoint } from '../template';

/** Arms of bellcrank and horn, m and rad. */
export interface Arms {
  /** From the pivot along the line of both holes, and how far that line lies inboard of the pivot. */
  readonly front: number;
  readonly rear: number;
  readonly inboard: number;
  readonly pushrod: number;
  /** From aft toward outboard. */
  readonly pushrodDirection: number;
  readonly horn: number;
  /** From aft upward. */
  readonly hornDirection: number;
  /** Eye to eye. */
  readonly rod: number;
}

/** Length of the elevator that is drawn behind its hinge, m. */
const ELEVATOR = 0.03;

const polar = (length: number, direction: number): TemplatePoint => [
  length * Math.cos(direction),
  length * Math.sin(direction),
];
const hole = (at: TemplatePoint): TemplateMark => ({ is: 'hole', at, diameter: 0 });
const line = (...points: readonly TemplatePoint[]): TemplateMark => ({ is: 'centre', points });

/** Holes of bellcrank and horn, from their pivots. */
export function controlTemplate(arms: Arms): Template[] {
  if (!Object.values(arms).every(Number.isFinite)) return [];
  const pivot: TemplatePoint = [0, 0];
  const [front, rear]: TemplatePoint[] = [
    [-arms.front, -arms.inboard],
    [arms.rear, -arms.inboard],
  ];
  const rod = polar(arms.pushrod, arms.pushrodDirection);
  const horn = polar(arms.horn, arms.hornDirection);
  const words = (at: TemplatePoint, text: string): TemplateMark => ({
    ...{ is: 'words', at: [at[0] + 0.002, at[1] + 0.003] },
    words: text,
  });
  return [
    {
      title: 'Bellcrank and horn',
      views: [
        {
          title: 'Bellcrank from above, square, nose to the left',
          marks: [
            line(front!, rear!),
            line(pivot, rod),
            ...[pivot, front!, rear!, rod].map(hole),
            words(front!, 'front'),
            words(rear!, 'rear'),
            words(rod, 'pushrod'),
          ],
        },
        {
          title: 'Horn from inboard, elevator neutral, nose to the left',
          marks: [line(pivot, horn), { is: 'cut', points: [pivot, [ELEVATOR, 0]] }, ...[pivot, horn].map(hole)],
        },
      ],
      notes: [
        {
          words:
            'Bellcrank: {} between the leadout holes, pushrod hole {} from the pivot. Horn: hole {} from the hinge line.',
          figures: [metres(arms.front + arms.rear), metres(arms.pushrod), metres(arms.horn)],
        },
        { words: 'Pushrod: {} from eye to eye.', figures: [metres(arms.rod)] },
        {
          words:
            'Crosses are middles of holes: drill them to your pivot, leadouts and pushrod, and leave material around them.',
        },
        { words: 'Before every flight: up is up, nothing binds.' },
      ],
    },
  ];
}
