import type { JSX } from 'preact';
import type { BlockCell } from '../../engine/index';
import { useSheet } from '../store/context';
import { LinesFigure } from './lines-figure';
import type { LinesNumbers } from './lines-layout';
import type { PictureProps } from './props';

/** The lines of the present design in plan and side view, with the numbers of their block. */
export function LinesPicture({ cell, trace }: PictureProps): JSX.Element | null {
  const sheet = useSheet();
  // Of the flight that the block takes; the second of its directions is clockwise.
  const flight = (result: string): number =>
    sheet.value(`${cell.fields.flight || sheet.namesOfRole('flight')[0]}.${result}`);
  const now = numbersOf(cell, sheet.value);
  const then = numbersOf(cell, sheet.baseline);
  // Numbers and trace come one after the other: for a moment one of them may have no answer.
  if (!Number.isFinite(now.bow_back)) return null;
  return (
    <LinesFigure
      trace={trace}
      title={`${cell.title}: plan and side view`}
      now={now}
      baseline={Number.isFinite(then.bow_back) ? then : undefined}
      cgRadius={flight('radius')}
      guideTrail={flight('guide_trail')}
      clockwise={flight('direction') === 1}
    />
  );
}

function numbersOf(cell: BlockCell, read: (path: string) => number): LinesNumbers {
  const of = (result: keyof LinesNumbers): number => read(`${cell.name}.${result}`);
  return {
    handle_trail: of('handle_trail'),
    line_trail: of('line_trail'),
    bow_back: of('bow_back'),
    bow_down: of('bow_down'),
    pull_at_handle: of('pull_at_handle'),
  };
}
