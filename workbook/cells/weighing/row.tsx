import { type Part, type WeighedPart, weighingPart } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { RemadeWords, useDifference } from '../parts/scale-said';
import { ScaleEntry } from './entry';
import { percent, type Written } from './words';

/** One part of the bench: done or not, what the scale says, and what weighing it is worth. */
export function BenchRow({ told, part, written }: { told: WeighedPart; part: Part; written: Written }) {
  const sheet = useSheet();
  const off = useDifference(told.path);
  const done = told.state === 'weighed';
  const again = (): void =>
    sheet.edit(
      (document) => weighingPart(document, `${told.path}.weighed`, part.fields.weighed ?? '', sheet.value) ?? [],
      part.title,
    );
  return (
    <li class="bench-row" data-bench={told.path} data-state={told.state}>
      <span class="bench-mark" role="img" aria-label={done ? 'weighed' : 'not weighed'}>
        {done ? '✓' : '○'}
      </span>
      <span class="bench-name">{part.title || part.name}</span>
      <ScaleEntry path={told.path} part={part} />
      <span class="aside bench-said">
        {told.state === 'remade' && (
          <>
            <RemadeWords path={told.path} part={part} />{' '}
            <button type="button" class="word" onClick={again}>
              It was weighed as it is now<span class="unseen">: {part.title}</span>
            </button>
          </>
        )}
        {done && (off === '' ? '' : `estimate ${written.mass(told.estimate)}, ${off}`)}
        {told.state === 'open' && `estimate ${written.mass(told.estimate)}${worth(told)}`}
      </span>
    </li>
  );
}

const worth = ({ share }: WeighedPart): string => (share > 0.005 ? `, ${percent(share)} of the band` : '');
