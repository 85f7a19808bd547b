import type { Mend, MendsAnswer, MendsCell } from '../../../engine/index';
import { capital, MEND_COSTS } from '../../../engine/index';
import { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import { effectWords, titleAt } from '../variants/words';
import { costTitles, mendTitle, reachWords } from './words';

/** Everything that mends it, the cheapest first, with what it does to the rest; one press makes a variant of it. */
export function MendsTable({ cell, answer }: { cell: MendsCell; answer: MendsAnswer }) {
  const sheet = useSheet();
  const costs = MEND_COSTS.filter((cost) => answer.found.some((mend) => mend.cost === cost));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard.
    <section class="result-table variants-table" aria-label={`What each change of ${cell.title} does`} tabIndex={0}>
      <table>
        <caption class="unseen">{`${cell.title}, the cheapest first`}</caption>
        <thead>
          <tr>
            <th scope="col">One change alone</th>
            {cell.wanted.map((path) => (
              <th scope="col" key={path}>
                {sheet.name(path)?.title ?? path}
              </th>
            ))}
            <th scope="col">
              <span class="unseen">Take it</span>
            </th>
          </tr>
        </thead>
        {costs.map((cost) => (
          <tbody key={cost}>
            <tr>
              <th scope="rowgroup" colSpan={cell.wanted.length + 2} class="variants-of">
                {costTitles[cost]}
              </th>
            </tr>
            {answer.found
              .filter((mend) => mend.cost === cost)
              .map((mend) => (
                <Line key={`${mend.path} ${mend.text}`} cell={cell} mend={mend} enters={mend === answer.found[0]} />
              ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}

function Line({ cell, mend, enters }: { cell: MendsCell; mend: Mend; enters: boolean }) {
  const sheet = useSheet();
  // A part that is weighed is called by what weighs.
  const lever = sheet.name(mend.path);
  const title = mendTitle(mend, lever, (path) => partTitle(path, titleAt(sheet, path)), sheet.optionTitle);
  const of = sheet.name(cell.of);
  const ends = sheet.cells.value.find(({ name }) => name === mend.room);
  const reach = of ? reachWords(mend, lever, of, ends && (ends.title || ends.name)) : '';
  return (
    <tr data-mend={mend.path} data-state={mend.state}>
      <th scope="row">
        {title}
        {reach !== '' && <span class="variants-apart">{reach}</span>}
      </th>
      {cell.wanted.map((path, w) => {
        const info = sheet.name(path);
        const effect = mend.effects[w]!;
        return <td key={path}>{info && !Number.isNaN(effect) ? effectWords(effect, info) : 'no answer'}</td>;
      })}
      <td>
        <button
          type="button"
          class="word quiet"
          {...along(enters)}
          onClick={() => sheet.makeVariant(capital(title), { [mend.path]: mend.text })}
        >
          Make a variant<span class="unseen"> of {title}</span>
        </button>
      </td>
    </tr>
  );
}

/** "Parts: Fin: weighed mass" is told of the fin. */
const partTitle = (path: string, title: string): string =>
  path.endsWith('.weighed') ? (title.split(': ').at(-2) ?? title) : title;
