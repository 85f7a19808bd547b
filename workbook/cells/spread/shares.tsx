import { useState } from 'preact/hooks';
import { type ChartCell, inSentence, type SpreadCell, type SweepProgress } from '../../../engine/index';
import { Chart } from '../../charts/index';
import { useSheet } from '../../store/context';
import { Pick } from '../shared/pick';

interface SharesProps {
  readonly cell: SpreadCell;
  readonly progress: SweepProgress;
  /** They are those of a design before. */
  readonly behind: boolean;
}

/** What makes most of the spread of one result, as bars. */
export function SpreadShares({ cell, progress, behind }: SharesProps) {
  const sheet = useSheet();
  const [picked, setPicked] = useState('');
  const results = progress.spread?.results ?? [];
  const path = results.some((result) => result.path === picked) ? picked : (results[0]?.path ?? '');
  const values = sheet.snapshot.value?.values;
  if (path === '' || !values) return null;
  const title = (of: string): string => sheet.name(of)?.title ?? of;
  const chart: ChartCell = {
    ...{ kind: 'chart', chart: 'shares', id: `${cell.id}-shares`, name: cell.name, series: cell.name },
    ...{ title: `What makes ${inSentence(title(path))} uncertain`, across: '', up: [path], lines: '' },
  };
  return (
    <div class="spread-shares" aria-busy={behind}>
      {results.length > 1 && (
        <div class="set-up-fields">
          <Pick
            id={`${cell.id}-shares-of`}
            label="Causes of the uncertainty of"
            value={path}
            options={results.map((result) => ({ value: result.path, title: title(result.path) }))}
            onPick={setPicked}
          />
        </div>
      )}
      <Chart
        cell={chart}
        names={sheet.names.value}
        values={values}
        moving={sheet.moving.value}
        checks={[]}
        progress={progress}
      />
      {behind && (
        <p class="aside">The shares are those of the design before, until enough designs of this one are computed.</p>
      )}
    </div>
  );
}
