import { formatNumber } from '../../../engine/index';
import { aboutChart } from '../frame/about';
import type { TableData } from '../frame/figures';
import type { Drawn } from '../frame/kind';
import { limitNotes, limitSentences } from '../frame/limit-words';
import { passedWords } from '../frame/limits';
import { missingSentence } from '../frame/missing-words';
import { heldNote, unaskedNotes } from '../frame/notes';
import type { PartsChartProps, SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence, leftOut, listed } from '../frame/words';
import type { BarData } from './bars';
import type { BarLayout } from './layout';

type Props = SweepChartProps | PartsChartProps;

/** "Bars of line pull, N over line set; one each for balsa and light ply." */
export const barAbout = ({ data: { panels, of } }: { readonly data: BarData }): string =>
  aboutChart(
    'Bars',
    panels.map(({ title }) => title),
    [of],
    [...new Set(panels.flatMap(({ groups }) => groups.flatMap(({ bars }) => bars.map(({ label }) => label))))],
  );

/** Each bar is a series of its own, so that the upright arrows go from one to the next. */
export const barReadings = ({ chart }: { readonly chart: BarLayout }): ReadSeries[] =>
  chart.panels.flatMap(({ panel, groups, box, zones, outside }) =>
    groups.flatMap((group) =>
      group.bars.map(
        (bar): ReadSeries => ({
          name: [group.label, bar.label].filter((each) => each !== '').join(', '),
          plot: { ...box, left: bar.end },
          points: [
            {
              at: { x: bar.end, y: bar.middle },
              ...(bar.sample === undefined || bar.present ? {} : { sample: bar.sample }),
              lines: [
                ...(bar.present ? ['Now'] : []),
                `${panel.info.title} ${panel.text(bar.si)}`,
                ...passedWords([...zones.map(({ zone }) => zone), ...outside], panel.shown(bar.si)),
              ],
            },
          ],
        }),
      ),
    ),
  );

export function barTable({ panels, of }: BarData): TableData {
  const lines = [
    ...new Map(panels.flatMap((p) => p.groups.flatMap((g) => g.bars.map((b) => [b.style, b.label])))).entries(),
  ];
  const named = lines.length > 1;
  const keys = [...new Map(panels.flatMap((p) => p.groups.map((g) => [g.key, g.label]))).entries()];
  return {
    head: [
      [
        { text: of, rows: named ? 2 : 1 },
        ...panels.map((p) => ({ text: p.title, columns: Math.max(1, lines.length) })),
      ],
      ...(named ? [panels.flatMap(() => lines.map(([, label]) => ({ text: label as string })))] : []),
    ],
    rows: keys.map(([key, label]) => ({
      head: label as string,
      cells: panels.flatMap((panel) => {
        const group = panel.groups.find((g) => g.key === key);
        return (lines.length === 0 ? [[0]] : lines).map(([style]) => {
          const bar = group?.bars.find((b) => b.style === style);
          return bar ? formatNumber(panel.shown(bar.si)) : '–';
        });
      }),
    })),
  };
}

/** Names that the sentence about parts gives. */
const NAMED = 3;

export function barSentences({ of, data, chart }: Drawn<Props, BarData, BarLayout>): string[] {
  const ofParts = 'parts' in of;
  const ghosts = chart.panels.some((p) => p.groups.some((g) => g.baseline !== undefined));
  return [
    ...(ofParts ? [partsSentence(data)] : data.panels.map(rangeSentence)),
    ...('parts' in of || data.across === undefined ? [] : limitSentences(data.across, of)),
    ...limitNotes(chart.panels),
    ...(ofParts ? [] : unaskedNotes(data.panels)),
    ghosts ? 'Dotted: baseline.' : '',
    heldNote(data.held),
    chart.left > 0 ? `${chart.left} more not shown.` : '',
    ofParts ? leftOut(data.missing, data.total, 'parts') : missingSentence(of.progress),
  ];
}

/** "Line pull runs from 24.5 N (0.46 mm) to 27.1 N (0.30 mm)." */
function rangeSentence(panel: BarData['panels'][number]): string {
  const bars = panel.groups.flatMap((g) =>
    g.bars.map((bar) => ({ si: bar.si, label: [g.label, bar.label].filter((each) => each !== '').join(', ') })),
  );
  if (bars.length < 2) return '';
  const least = bars.reduce((a, b) => (b.si < a.si ? b : a));
  const most = bars.reduce((a, b) => (b.si > a.si ? b : a));
  const end = ({ si, label }: typeof least): string => `${panel.text(si)} (${label})`;
  if (least.si === most.si) return `${panel.info.title} is ${panel.text(least.si)} throughout.`;
  return `${panel.info.title} runs from ${end(least)} to ${end(most)}.`;
}

/** "The greatest mass: engine 250 g, wing 180 g and body 90 g, together 61 % of all." */
function partsSentence({ panels: [panel] }: BarData): string {
  if (!panel || panel.groups.length === 0) return '';
  const first = panel.groups.slice(0, NAMED).map((g) => ({ si: g.bars[0]!.si, label: g.label }));
  const sum = panel.groups.reduce((total, g) => total + g.bars[0]!.si, 0);
  const oneSided = panel.groups.every((g) => g.bars[0]!.si >= 0);
  const share = first.reduce((total, each) => total + each.si, 0) / sum;
  const together = oneSided && sum > 0 ? `, together ${Math.round(100 * share)} % of all` : '';
  const named = listed(first.map(({ si, label }) => `${inSentence(label)} ${panel.text(si)}`));
  return `The greatest ${inSentence(panel.info.title)}: ${named}${together}.`;
}
