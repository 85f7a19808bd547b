import { useSignal } from '@preact/signals';
import {
  bound,
  differenceFromSI,
  formatNumber,
  type LeversCell,
  leverEffect,
  leverRatio,
  type NameInfo,
  NOT_COMPUTED,
  rankLevers,
  type SweepProgress,
} from '../../../engine/index';
import { changeTitle, effectsIn } from '../../charts/index';
import { along } from '../../controls/along';
import { TakeRow } from '../../controls/take-design';
import { useSheet } from '../../store/context';
import type { Place } from '../../store/taker';

/** Every change with what it does to each result, the strongest first; one that can't fly with its reason. */
export function LeversRanking({ cell, progress }: { cell: LeversCell; progress: SweepProgress }) {
  const sheet = useSheet();
  const taken = useSignal<readonly Place[] | undefined>(undefined);
  const { wanted } = progress;
  const at = Math.max(0, wanted.indexOf(cell.rank));
  const per = cell.per === '' ? undefined : wanted.indexOf(cell.per);
  const infos = wanted.map((path) => sheet.name(path));
  const [one, other] = [infos[at], per === undefined ? undefined : infos[per]];
  const order = rankLevers(progress, at, per).filter((k) => progress.why[k] !== NOT_COMPUTED);
  const texts = infos.map((info, w) => (info ? effectsIn(progress, w, info) : String));
  const ratioTitle =
    other && `${one?.title ?? ''} for each ${other.suffix || other.unit || '1'} of ${other.title.toLowerCase()}`;
  return (
    <>
      <TakeRow taken={taken} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than its place is scrolled by keyboard. */}
      <section class="result-table levers-ranking" aria-label={`What each change of ${cell.title} does`} tabIndex={0}>
        <table>
          <caption class="unseen">{`What each change of ${cell.title} does, the strongest first`}</caption>
          <thead>
            <tr>
              <th scope="col">Change</th>
              {infos.map((info, w) => (
                <th scope="col" key={wanted[w]} aria-sort={w === at && per === undefined ? 'descending' : undefined}>
                  {info?.title ?? wanted[w]}
                </th>
              ))}
              {ratioTitle && (
                <th scope="col" aria-sort="descending">
                  {ratioTitle}
                </th>
              )}
              <th scope="col" class="levers-take">
                <span class="unseen">Take it</span>
              </th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">As it stands</th>
              {wanted.map((path) => (
                <td key={path}>{sheet.shown(path)}</td>
              ))}
              {ratioTitle && <td />}
              <td class="levers-take" />
            </tr>
            {order.map((k) => {
              const change = progress.levers!.changes[k]!;
              const info = sheet.name(change.path);
              const reason = progress.sentences[progress.why[k]! - 1];
              return (
                <tr key={k} data-change={`${change.path} ${change.way} ${change.to}`}>
                  <th scope="row">{info ? changeTitle(change, info, sheet.optionTitle) : change.path}</th>
                  {infos.map((each, w) => (
                    <td key={wanted[w]}>{each ? effectWords(leverEffect(progress, w, k), texts[w]!) : '–'}</td>
                  ))}
                  {ratioTitle && <td>{ratioWords(leverRatio(progress, at, per!, k), one, other)}</td>}
                  <td class="levers-take">
                    <button
                      type="button"
                      class="word quiet"
                      {...along(k === order[0])}
                      onClick={() => {
                        taken.value = [{ path: change.path, si: change.to }];
                      }}
                    >
                      Take
                      <span class="unseen"> {info ? changeTitle(change, info, sheet.optionTitle) : change.path}</span>
                    </button>
                  </td>
                  {reason !== undefined && <td class="levers-reason">{reason}</td>}
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
    </>
  );
}

const effectWords = (si: number, text: (si: number) => string): string => (si === 0 ? 'no change' : text(si));

/** "−4.2 N/s"; nothing where the other result doesn't move. */
function ratioWords(ratio: number, one: NameInfo | undefined, other: NameInfo | undefined): string {
  if (!one || !other || Number.isNaN(ratio)) return '–';
  const number = differenceFromSI(ratio, one.unit) / differenceFromSI(1, other.unit);
  const unit = (info: NameInfo): string => info.suffix || info.unit || '1';
  return bound(`${number > 0 ? '+' : ''}${formatNumber(number)}`, `${unit(one)}/${unit(other)}`);
}
