import { formatNumber, fromSI, type SpreadCell, type SpreadTold } from '../../../engine/index';
import { causesSentence } from '../../charts/index';
import { useSheet } from '../../store/context';
import { spaced } from '../shared/progress-words';

/** Results differ little from one column to the next: three digits would make them look alike. */
const DIGITS = 4;

/** Mean, standard deviation and percentiles of every result, with what the present design has. */
export function SpreadResults({ cell, told, all }: { cell: SpreadCell; told: SpreadTold; all: number }) {
  const sheet = useSheet();
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard. */}
      <section class="result-table spread-results" aria-label={`Results of ${cell.title}`} tabIndex={0}>
        <table>
          <caption class="unseen">{`Results of ${cell.title}, of ${spaced(told.designs)} designs`}</caption>
          <thead>
            <tr>
              <th scope="col">Result</th>
              <th scope="col">As typed</th>
              <th scope="col">Mean</th>
              <th scope="col">
                <span aria-hidden="true">±</span>
                <span class="unseen">Standard deviation</span>
              </th>
              <th scope="col">
                5 %<span class="unseen"> lie below</span>
              </th>
              <th scope="col">
                50 %<span class="unseen"> lie below</span>
              </th>
              <th scope="col">
                95 %<span class="unseen"> lie below</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {told.results.map((result) => {
              const info = sheet.name(result.path);
              const unit = info?.unit ?? '';
              const behind = info?.suffix || unit;
              const text = (si: number): string => formatNumber(fromSI(si, unit), DIGITS);
              const apart = formatNumber(fromSI(result.deviation, unit) - fromSI(0, unit));
              return (
                <tr key={result.path} data-result={result.path}>
                  <th scope="row">
                    {info?.title ?? result.path}
                    {behind !== '' && `, ${behind}`}
                  </th>
                  {[text(sheet.value(result.path)), text(result.mean), apart].map((each, k) => (
                    <td key={k}>{each}</td>
                  ))}
                  {[result.low, result.middle, result.high].map((si, k) => (
                    <td key={k}>{text(si)}</td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      <p class="aside">{countWords(told, all)}</p>
    </>
  );
}

/** "Of 1000 designs; for the shares each of them is computed again with one thing changed, 5000 in all." */
function countWords(told: SpreadTold, all: number): string {
  const some = told.designs < told.samples ? ` of ${spaced(told.samples)}` : '';
  const count = `Of ${spaced(told.designs)}${some} designs; for the shares each is computed again with one thing changed at a time, ${spaced(all)} in all.`;
  return [count, causesSentence(told)].filter(Boolean).join(' ');
}
