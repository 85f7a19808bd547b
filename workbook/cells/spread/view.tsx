import { useRef } from 'preact/hooks';
import {
  type NameInfo,
  pairPath,
  type SpreadCell,
  type SpreadRow,
  type SweepProgress,
  spreadPath,
} from '../../../engine/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { tooOldForPaper } from '../../store/printing';
import { SetUp } from '../shared/set-up';
import { SweepProgressLine } from '../shared/sweep-progress';
import { SpreadForm } from './form';
import { beginning } from './offer';
import { SpreadResults } from './results';
import { SpreadShares } from './shares';
import { titleOfRow } from './words';

/** What differs and by how much, what that makes of the results, and what makes most of it. */
export function SpreadView({ cell }: { cell: SpreadCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.sweeps.watch(cell.name), cell.name);
  const told = sheet.sweeps.progress(cell.name).value;
  const progress = tooOldForPaper(() => sheet.sweeps.madeFor(cell.name).value, sheet.snapshot.value) ? undefined : told;
  const faulty = sheet.faultAt(cell.name) !== undefined;
  const shown = progress?.spread && !faulty ? progress : undefined;
  // While a finger is down no shares are computed: those of the design before stay, and are called so.
  const shared = useRef<SweepProgress | undefined>(undefined);
  if (!shown || shown.spread!.compared > 0) shared.current = shown;
  return (
    <div class="spread" ref={watched}>
      <ul class="spread-rows">
        {cell.rows.map((row, k) => (
          <li key={row.of} data-path={spreadPath(cell, k)}>
            {rowWords(row, spreadPath(cell, k), sheet.name(row.of), sheet.shown)}
            {row.size === beginning(row.of) && ', a guess: type your own'}
          </li>
        ))}
        {cell.pairs?.map(({ of, and }, k) => (
          <li key={pairPath(cell, k)} data-path={pairPath(cell, k)}>
            {titleOfRow(of, sheet.name(of))} and {titleOfRow(and, sheet.name(and))}: correlation{' '}
            {sheet.shown(pairPath(cell, k))}
          </li>
        ))}
        {cell.parts && (
          <li>
            Weight and place of every part: normal, by its own uncertainty in the parts table; what is cut from one
            material is off in weight together
          </li>
        )}
      </ul>
      {!faulty && <SweepProgressLine cell={cell} />}
      {shown && <SpreadResults cell={cell} told={shown.spread!} all={shown.total} />}
      {shown && <SpreadShares cell={cell} progress={shared.current ?? shown} behind={shared.current !== shown} />}
      <SetUp title="Set up these tolerances" open={faulty || sheet.faultWithin(cell.name) !== undefined}>
        <SpreadForm cell={cell} />
      </SetUp>
    </div>
  );
}

/** "Tip weight: normal, standard deviation 0.42 g". */
function rowWords(row: SpreadRow, at: string, info: NameInfo | undefined, shown: (path: string) => string): string {
  const title = titleOfRow(row.of, info);
  if (row.size.trim() === '') return `${title}: normal, by its own uncertainty in the parts table`;
  const below = shown(`${at}.size`);
  if (row.distribution === 'normal') return `${title}: normal, standard deviation ${below}`;
  const kind = row.distribution === 'uniform' ? 'anywhere' : 'most likely as typed,';
  if (row.above.trim() === '') return `${title}: ${kind} within ± ${below}`;
  return `${title}: ${kind} from ${below} below to ${shown(`${at}.above`)} above`;
}
