import { formatNumber, fromSI, type SpreadCell, type SpreadTold } from '../../../engine/index';
import { causesSentence } from '../../charts/index';
import { useSheet } from '../../store/context';
import { spaced } from '../progress-words';

/** Results differ little from one column to the next: three digits would make them look alike. */
const DIGITS = 4;

/** Mean, standard deviation and percentiles of every result, with what the present design has. */
export function SpreadResults({ cell, told }: { cell: SpreadCell; told: SpreadTold }) {
  const sheet = useSheet();
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard. */}
      <section class="spread-results" aria-label={`Results of ${cell.title}`} tabIndex={0}>
        <table>
          <caption class="unseen">{`Results of ${cell.title}, of ${spaced(told.designs)} designs`}</caption>
          <thead>
            <tr>
              <th scope="col">Result</th>
              <th scope="col">As typed</th>
              <th scope="col">Mean</th>
              <th scope="col">
                <abbr title="Standard deviation">Deviation</abbr>
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
      <p class="aside">{countWords(told)}</p>
    </>
  );
}

/** "Of 1000 designs, seed 1." and what has no answer. */
function countWords(told: SpreadTold): string {
  const some = told.designs < told.samples ? ` of ${spaced(told.samples)}` : '';
  return [`Of ${spaced(told.designs)}${some} designs.`, causesSentence(told)].filter(Boolean).join(' ');
}
