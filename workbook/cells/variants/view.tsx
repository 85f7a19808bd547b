import { type SweepProgress, setNow, type VariantsCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { tooOldForPaper } from '../../store/printing';
import { Remade } from '../shared/remade';
import { SetUp } from '../shared/set-up';
import { Wanted } from '../shared/wanted';
import { OneVariant } from './one';
import { AddCopied } from './paste';
import { VariantsTable } from './table';

/** The variants of the design beside the baseline and the design as set, and what can be done with each. */
export function VariantsView({ cell }: { cell: VariantsCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.sweeps.watch(cell.name), cell.name);
  const told = sheet.sweeps.progress(cell.name).value;
  const progress = tooOldForPaper(() => sheet.sweeps.madeFor(cell.name).value, sheet.snapshot.value) ? undefined : told;
  const faulty = sheet.faultAt(cell.name) !== undefined;
  const shown = !faulty && progress && fits(progress, cell) ? progress.variants : undefined;
  const variants = sheet.part('variants') ?? [];
  return (
    <div class="variants" ref={watched}>
      {progress?.state === 'fault' && !faulty && <p class="fault-flag fault">{progress.message}</p>}
      {shown && <VariantsTable cell={cell} told={shown} />}
      {variants.length === 0 && (
        <p class="aside">
          No variants yet. A variant is a set of changes under a name: the design stays as it is until you keep one.
          Move the slides and make one of what is set, or take a design from a point of a chart or a row of a table.
        </p>
      )}
      <Remade of={[...new Set(variants.flatMap(({ changes }) => Object.keys(changes)))]} />
      <button
        type="button"
        class="word"
        onClick={() => sheet.makeVariant(`Variant ${variants.length + 1}`, setNow(sheet.document.peek()))}
      >
        Make a variant of what is set now
      </button>
      {variants.map((variant, k) => (
        // By its place: a name that is typed anew is no other variant.
        <OneVariant key={k} id={`${cell.id}-variant${k + 1}`} variant={variant} />
      ))}
      <AddCopied id={cell.id} />
      <SetUp title="Set up this table" open={faulty}>
        <Wanted
          id={cell.id}
          wanted={cell.wanted}
          sheet={sheet}
          onChange={(wanted) => sheet.changeCell({ ...cell, wanted })}
        />
      </SetUp>
    </div>
  );
}

/** What was computed for other results is about to be computed anew. */
const fits = ({ wanted }: SweepProgress, cell: VariantsCell): boolean =>
  wanted.length === cell.wanted.length && wanted.every((path, k) => path === cell.wanted[k]);
