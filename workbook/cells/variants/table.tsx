import { useState } from 'preact/hooks';
import type { NameInfo, VariantColumn, VariantsCell, VariantsTold } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { underLeast } from '../../store/reader';
import { showChange, showValue } from '../../store/show';
import { Pick } from '../shared/pick';
import {
  changeAt,
  changedPaths,
  effectWords,
  headOf,
  methodSentences,
  referenceOf,
  shareOf,
  stopAt,
  textInReference,
  titleAt,
  typedWords,
} from './words';

/** One column a design: its results with their differences, then what is changed and what each change does. */
export function VariantsTable({ cell, told }: { cell: VariantsCell; told: VariantsTold }) {
  const { columns } = told;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard. */}
      <section class="result-table variants-table" aria-label={`Results of ${cell.title}`} tabIndex={0}>
        <table>
          <caption class="unseen">{`${cell.title}: results and what is changed`}</caption>
          <thead>
            <tr>
              <th scope="col">
                <span class="unseen">Result</span>
              </th>
              {columns.map((column) => (
                <th scope="col" key={headOf(column)} data-what={column.what}>
                  {headOf(column)}
                </th>
              ))}
            </tr>
          </thead>
          <Results wanted={cell.wanted} told={told} />
          <Changes cell={cell} told={told} />
        </table>
      </section>
      <Reasons told={told} />
      {methodSentences(told).map((sentence) => (
        <p class="aside" key={sentence}>
          {sentence}
        </p>
      ))}
    </>
  );
}

function Results({ wanted, told }: { wanted: readonly string[]; told: VariantsTold }) {
  const sheet = useSheet();
  const reference = referenceOf(told);
  return (
    <tbody>
      {wanted.map((path, w) => (
        <tr key={path} data-result={path}>
          <th scope="row">{sheet.name(path)?.title ?? path}</th>
          {told.columns.map((column) => (
            <Result key={headOf(column)} path={path} at={w} column={column} reference={reference} />
          ))}
        </tr>
      ))}
    </tbody>
  );
}

interface ResultProps {
  readonly path: string;
  readonly at: number;
  readonly column: VariantColumn;
  readonly reference: VariantColumn;
}

function Result({ path, at, column, reference }: ResultProps) {
  const sheet = useSheet();
  const info = sheet.name(path);
  const value = column.values[at]!;
  if (!info || !column.done) return <td>{info ? '…' : '–'}</td>;
  const stops =
    underLeast(info, value) !== undefined || stopAt(sheet.checks.value, path, value, sheet.value) !== undefined;
  const apart = column === reference ? '' : showChange(info, value, reference.values[at]!);
  return (
    <td class={stops ? 'too-low' : undefined}>
      {stops && (
        <>
          <span aria-hidden="true">✕ </span>
          <span class="unseen">stop: </span>
        </>
      )}
      {showValue(info, value)}
      {apart !== '' && <span class="variants-apart">{apart === '0' ? 'no change' : apart}</span>}
    </td>
  );
}

function Changes({ cell, told }: { cell: VariantsCell; told: VariantsTold }) {
  const sheet = useSheet();
  const [picked, setPicked] = useState('');
  const paths = changedPaths(told);
  const at = Math.max(0, cell.wanted.indexOf(picked));
  const info = sheet.name(cell.wanted[at] ?? '');
  const { columns } = told;
  if ((paths.length === 0 && !columns.some(({ shares }) => shares)) || !info) return null;
  const built = columns.some(({ shares }) => shares?.built);
  const together = columns.some(({ shares, changes }) => shares?.method === 'alone' && changes.length > 1);
  return (
    <tbody>
      <tr>
        <th scope="rowgroup" colSpan={columns.length + 1} class="variants-of">
          <Pick
            id={`${cell.id}-shares`}
            label="What is changed, and what that does to"
            value={cell.wanted[at]!}
            options={cell.wanted.map((value) => ({ value, title: sheet.name(value)?.title ?? value }))}
            onPick={setPicked}
          />
        </th>
      </tr>
      {built && (
        <Rest
          title="What was built since the baseline"
          told={told}
          info={info}
          of={({ shares }) => shares?.built?.[at]}
        />
      )}
      {paths.map((path) => (
        <Change key={path} path={path} at={at} told={told} info={info} />
      ))}
      {together && (
        <Rest
          title="All of them together, besides"
          told={told}
          info={info}
          of={({ shares, changes }) =>
            shares?.method === 'alone' && changes.length > 1 ? shares.together[at] : undefined
          }
        />
      )}
    </tbody>
  );
}

interface ChangeProps {
  readonly path: string;
  readonly at: number;
  readonly told: VariantsTold;
  readonly info: NameInfo;
}

function Change({ path, at, told, info }: ChangeProps) {
  const sheet = useSheet();
  const title = titleAt(sheet, path);
  const reference = referenceOf(told);
  const words = (text: string): string => (text === '' ? 'blank' : (sheet.optionTitle(path, text) ?? typedWords(text)));
  return (
    <tr data-change={path}>
      <th scope="row">{title}</th>
      {told.columns.map((column) => {
        const change = changeAt(column, path);
        if (column === reference) return <td key={headOf(column)}>{words(textInReference(told, path))}</td>;
        if (!change) {
          return (
            <td key={headOf(column)} class="aside">
              same
            </td>
          );
        }
        const share = effectWords(shareOf(column, path, at), info);
        return (
          <td key={headOf(column)}>
            {words(change.to)}
            <span class="variants-apart">{share || (column.shares ? 'no answer' : '…')}</span>
          </td>
        );
      })}
    </tr>
  );
}

interface RestProps {
  readonly title: string;
  readonly told: VariantsTold;
  readonly info: NameInfo;
  of(column: VariantColumn): number | undefined;
}

/** What no single change does. */
const Rest = ({ title, told, info, of }: RestProps) => (
  <tr>
    <th scope="row">{title}</th>
    {told.columns.map((column) => (
      <td key={headOf(column)}>{effectWords(of(column) ?? Number.NaN, info)}</td>
    ))}
  </tr>
);

/** Why a design has no answer, and which of its changes have no place in the design any more. */
function Reasons({ told: { columns } }: { told: VariantsTold }) {
  const reasons = columns.filter(({ reason }) => reason !== '');
  const lost = columns.filter(({ gone }) => gone.length > 0);
  return (
    <>
      {reasons.length > 0 && (
        <ul class="variants-reasons">
          {reasons.map((column) => (
            <li key={headOf(column)}>{`${headOf(column)}: ${column.reason}`}</li>
          ))}
        </ul>
      )}
      {lost.map((column) => (
        <p class="aside" data-gone key={headOf(column)}>
          {goneSentence(column)}
        </p>
      ))}
    </>
  );
}

const goneSentence = ({ name, gone }: VariantColumn): string =>
  gone.length === 1
    ? `${name} changes ${plain(gone[0]!)}, which is not in the design any more: kept, and not counted.`
    : `${name} changes ${gone.map(plain).join(', ')}, which are not in the design any more: kept, and not counted.`;

const plain = (path: string): string => `“${path.replaceAll('_', ' ').replaceAll('.', ': ')}”`;
