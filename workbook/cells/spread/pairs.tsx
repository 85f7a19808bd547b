import { pairPath, type SpreadCell, type SpreadPair } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { Pick, type PickOption } from '../shared/pick';
import { RowFaults } from '../shared/row-faults';
import { SetUpEntry } from '../shared/set-up-entry';
import { titleOfRow } from './words';

/** The first two rows that have no correlation yet. */
function freePair(rows: readonly string[], pairs: readonly SpreadPair[]): Omit<SpreadPair, 'text'> | undefined {
  const all = rows.flatMap((of, k) => rows.slice(k + 1).map((and) => ({ of, and })));
  return all.find(
    ({ of, and }) => !pairs.some((pair) => [of, and].every((each) => [pair.of, pair.and].includes(each))),
  );
}

interface PairsProps {
  readonly cell: SpreadCell;
  onChange(pairs: readonly SpreadPair[]): void;
}

/** Which rows are off together, and how closely. */
export function SpreadPairs({ cell, onChange }: PairsProps) {
  const sheet = useSheet();
  const pairs = cell.pairs ?? [];
  const title = (of: string): string => titleOfRow(of, sheet.name(of));
  const options = cell.rows.map(({ of }): PickOption => ({ value: of, title: title(of) }));
  const put = (k: number, to: Partial<SpreadPair>): void => onChange(pairs.with(k, { ...pairs[k]!, ...to }));
  const free = freePair(
    cell.rows.map(({ of }) => of),
    pairs,
  );
  return (
    <>
      {pairs.map((pair, k) => {
        const name = `Correlation of ${title(pair.of)} and ${title(pair.and)}`;
        const at = pairPath(cell, k);
        const others = (than: string): PickOption[] => options.filter(({ value }) => value !== than);
        return (
          // A pair is known by its place: its text has a path by it.
          <fieldset class="set-up-axis" key={k}>
            <legend>{name}</legend>
            <div class="set-up-fields">
              <Pick
                id={`${cell.id}-pair${k + 1}-of`}
                label="Off together"
                value={pair.of}
                options={others(pair.and)}
                onPick={(of) => put(k, { of })}
              />
              <Pick
                id={`${cell.id}-pair${k + 1}-and`}
                label="and"
                value={pair.and}
                options={others(pair.of)}
                onPick={(and) => put(k, { and })}
              />
              <SetUpEntry
                word="Correlation"
                label={name}
                path={at}
                text={pair.text}
                shown={sheet.shown(at)}
                placeholder="−1 to 1"
              />
              <button type="button" class="word quiet" onClick={() => onChange(pairs.toSpliced(k, 1))}>
                Remove<span class="unseen"> {name}</span>
              </button>
            </div>
            <RowFaults paths={[at]} />
          </fieldset>
        );
      })}
      {free && (
        <p class="aside">
          <button type="button" class="word quiet" onClick={() => onChange([...pairs, { ...free, text: '0' }])}>
            Add a correlation
          </button>{' '}
          of two things that are off together. All else is independent, but for what is cut from one material: its
          density differs once.
        </p>
      )}
    </>
  );
}
