import { capital, inSentence } from '../../sheet/called';
import type { Axis, ChartCell, SweepCell } from '../../sheet/document';
import { freeIds, freeName, nameFromTitle, takenNames } from '../../sheet/free-names';
import { type Live, openLive } from '../../sheet/live';
import { sheetWith } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import type { NameInfo } from '../../terms/index';
import { offerChart } from './offer';
import type { ChartWish, MakingAnswer, MakingPlace } from './told';
import { makeVariable, putPieces } from './variable';

/** Enough for a smooth curve, few enough to be there at once; and as many lines as can be told apart. */
const ACROSS = 21;
const LINES = 3;

/** Makes a chart with the trial series that it is drawn from; a number that is typed becomes a variable where it has to slide. */
export function makeChart(wish: ChartWish, live: Live, library: Library, place: MakingPlace): MakingAnswer {
  const offer = offerChart(wish.of, live);
  if (!offer.ok) return offer;
  if (!offer.others.includes(wish.other)) return { ok: false, message: 'Pick what the chart is drawn against.' };
  const result = offer.asks === 'against' ? wish.of : wish.other;
  const set = offer.asks === 'against' ? wish.other : wish.of;
  const says: string[] = [];
  const done: string[] = [];
  let now = live;
  const axes: Axis[] = [];
  for (const [of, count] of [[wish.lines, LINES] as const, [set, ACROSS] as const]) {
    if (of === '' || axes.some((axis) => axis.of === of)) continue;
    const run = running(of, now, place);
    if (!run.ok) return run;
    says.push(...run.says);
    if (run.done !== '') done.push(run.done);
    if (run.document !== now.compiled.document) now = openLive(run.document, library);
    axes.push({ of: run.path, low: '', high: '', count });
  }
  const { document, names } = now.compiled;
  const title = (path: string): string => names.find((info) => info.path === path)?.title ?? path;
  const across = axes.at(-1)!.of;
  const lines = axes.length > 1 ? axes[0]!.of : '';
  const [ids, taken] = [freeIds(document), new Set(takenNames(document))];
  const give = (wanted: string): string => {
    const name = freeName(nameFromTitle(wanted) || 'chart', taken);
    taken.add(name);
    return name;
  };
  const each = lines === '' ? '' : `, for each ${inSentence(title(lines))}`;
  const seriesTitle = `${capital(title(across))}${lines === '' ? '' : ` by ${inSentence(title(lines))}`}`;
  const series: SweepCell = {
    ...{ kind: 'trial_series', id: ids(), name: give(seriesTitle), title: seriesTitle, folded: true },
    ...{ axes, wanted: [result] },
  };
  const chartTitle = `${capital(title(result))} against ${inSentence(title(across))}${each}`;
  const chart: ChartCell = {
    ...{ kind: 'chart', id: ids(), name: give(chartTitle), title: chartTitle },
    ...{ chart: infoOf(across, names)?.options ? 'bars' : 'line', series: series.name, across, up: [result], lines },
  };
  const grown = putPieces(document, [series, chart], place);
  const on = sheetWith(grown, place.sheet)?.title ?? '';
  says.push(`Adds the trial series “${seriesTitle}” and the chart “${chartTitle}” to the sheet “${on}”.`);
  return {
    ok: true,
    document: grown,
    cell: chart.id,
    path: chart.name,
    says,
    done: [`Added: ${chartTitle}.`, ...done].join(' '),
  };
}

const infoOf = (path: string, names: readonly NameInfo[]): NameInfo | undefined =>
  names.find((info) => info.path === path);

/** What runs along an axis: a choice as it is, a number as a variable. */
function running(of: string, live: Live, place: MakingPlace) {
  const { document, names } = live.compiled;
  if (infoOf(of, names)?.options) return { ok: true, document, path: of, says: [], done: '' } as const;
  return makeVariable(of, live, place);
}
