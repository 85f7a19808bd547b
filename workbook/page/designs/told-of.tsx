import type { KeyFigure } from '../../../engine/index';
import { SmallPicture } from '../../drawing/index';
import type { Designs } from '../../store/designs';
import type { Design } from '../../store/keep/index';
import { showValue } from '../../store/show';
import { apartWords } from './apart-words';

interface Props {
  readonly design: Design;
  readonly designs: Designs;
}

/** These are told in a list of designs, in this order. */
const LISTED = ['parts.mass', 'flight.pull', 'flight.pull_per_weight'];
const BEFORE: Readonly<Record<string, string>> = { 'flight.pull': 'pulls ' };

/** What a design is and what it weighs and pulls, as one line: "Club racer, 640 g, pulls 21.4 N, 3.4 × weight". */
export function toldWords(kind: string, figures: readonly KeyFigure[]): string {
  const said = LISTED.flatMap((of) => {
    const figure = figures.find((each) => each.of === of);
    return figure && !Number.isNaN(figure.value) ? [`${BEFORE[of] ?? ''}${showValue(figure, figure.value)}`] : [];
  });
  const silent = figures.some(({ of, value }) => of === 'flight.pull' && Number.isNaN(value));
  return [...(kind === '' ? [] : [kind]), ...said, ...(silent ? ['no answer for the flight'] : [])].join(', ');
}

/** Plan and side view of a design, once the engine has told. */
export function PictureOf({ design, designs }: Props) {
  const told = designs.hangar.told.value.get(design.text);
  return told ? <SmallPicture shapes={told.drawing} title={design.title || 'Untitled design'} /> : null;
}

/** Class or kind, weight and pull of a design, once the engine has told. */
export function ToldOf({ design, designs }: Props) {
  const told = designs.hangar.told.value.get(design.text);
  const words = told ? toldWords(told.kind, told.figures) : '';
  return words === '' ? null : <p data-told={design.id}>{words}</p>;
}

/** How a design is told from the one of the same title that was changed after it. */
export function ApartWords({ design, designs }: Props) {
  const apart = designs.hangar.apart.value.get(design.id);
  return apart ? <p class="aside">{apartWords(apart, Date.now())}</p> : null;
}
