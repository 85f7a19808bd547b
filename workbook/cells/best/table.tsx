import { useSignal } from '@preact/signals';
import { type BestAnswer, type BestCell, capital, type NameInfo } from '../../../engine/index';
import { along } from '../../controls/along';
import { TakeRow } from '../../controls/take-design';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { showValue } from '../../store/show';
import type { Place } from '../../store/taker';

/** Each of the best designs in a row: what makes it, what it gives, and the press that takes it. */
export function BestTable({ cell, answer }: { cell: BestCell; answer: BestAnswer }) {
  const sheet = useSheet();
  const taken = useSignal<readonly Place[] | undefined>(undefined);
  const { axes, goals, wanted, shown } = answer;
  const title = (path: string): string => capital(sheet.name(path)?.title ?? path);
  return (
    <>
      <TakeRow taken={taken} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard. */}
      <section class="result-table best-table" aria-label={`Designs of ${cell.title}`} tabIndex={0}>
        <table>
          <caption class="unseen">{`Designs of ${cell.title}, the best in the first wish first`}</caption>
          <thead>
            <tr>
              {axes.map((path) => (
                <th scope="col" key={path}>
                  {title(path)}
                </th>
              ))}
              {goals.map(({ of, way }) => (
                <th scope="col" key={of} class="best-wish">
                  {title(of)}, {way}
                </th>
              ))}
              {wanted.map((path) => (
                <th scope="col" key={path}>
                  {title(path)}
                </th>
              ))}
              <th scope="col" class="best-take">
                <span class="unseen">Take it</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map(({ at, goals: values, others }, row) => {
              const design = axes.map((path, a) => ({ path, si: at[a]! }));
              return (
                <tr key={at.join()}>
                  {design.map(({ path, si }) => (
                    <td key={path}>{placeWords(sheet, path, si)}</td>
                  ))}
                  {goals.map(({ of }, g) => (
                    <td key={of}>{valueWords(sheet.name(of), values[g]!)}</td>
                  ))}
                  {wanted.map((path, w) => (
                    <td key={path}>{valueWords(sheet.name(path), others[w]!)}</td>
                  ))}
                  <td class="best-take">
                    <button
                      type="button"
                      class="word quiet"
                      {...along(row === 0)}
                      onClick={() => {
                        taken.value = design;
                      }}
                    >
                      Take<span class="unseen"> {sheet.taker.title(design)}</span>
                    </button>
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
    </>
  );
}

function placeWords(sheet: Sheet, path: string, si: number): string {
  const option = sheet.name(path)?.options?.[si];
  if (option === undefined) return valueWords(sheet.name(path), si);
  return sheet.optionTitle(path, option) ?? option.replaceAll('_', ' ');
}

const valueWords = (info: NameInfo | undefined, si: number): string =>
  info && !Number.isNaN(si) ? showValue(info, si) : 'no answer';
