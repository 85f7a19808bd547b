import { type FitAnswer, type FitCell, formatNumber, type LogCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { takenChanges } from './taken';
import { foundWords, isTaken, nearWords, restWords } from './words';

const NO_INFO = { unit: '', suffix: '' };

/** The factors found with their standard errors, and the way to put them into the design. */
export function FitFactors({ cell, answer }: { cell: FitCell; answer: FitAnswer }) {
  const sheet = useSheet();
  const infoOf = (path: string) => sheet.name(path) ?? NO_INFO;
  const title = (path: string): string => sheet.name(path)?.title ?? path;
  const pairs = answer.factors.flatMap((a, j) =>
    answer.factors.slice(j + 1).map((b, k) => ({ a: a.path, b: b.path, r: answer.correlation[j]![j + 1 + k]! })),
  );
  const told = pairs.filter(({ r }) => !Number.isNaN(r));
  const take = (): void => {
    const log = sheet.cells.value.find((each): each is LogCell => each.kind === 'log' && each.name === cell.log);
    sheet.edit(() => takenChanges(answer, log, sheet), `the values of ${cell.title}`);
  };
  return (
    <>
      <table class="fit-factors">
        <caption class="unseen">Factors found</caption>
        <thead>
          <tr>
            <th scope="col">Factor</th>
            <th scope="col">In the design</th>
            <th scope="col">Found ± standard error</th>
          </tr>
        </thead>
        <tbody>
          {answer.factors.map((factor) => (
            <tr key={factor.path}>
              <th scope="row">{title(factor.path)}</th>
              <td>{sheet.shown(factor.path)}</td>
              <td>{foundWords(factor, infoOf(factor.path))}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="aside">
        {nearWords(answer)} {restWords(answer)}
        {told.map(({ a, b, r }) => ` Correlation of ${title(a)} and ${title(b)}: ${formatNumber(r)}.`).join('')}
      </p>
      {answer.takeable && answer.factors.every(isTaken) ? (
        <p>These values are in the design.</p>
      ) : (
        <button type="button" class="word fit-take" disabled={!answer.takeable} onClick={take}>
          Take these values into the design
        </button>
      )}
    </>
  );
}
