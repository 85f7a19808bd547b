import {
  type ChartCell,
  type CheckCell,
  chartNeeds,
  chartSource,
  PART_BARS,
  sameDimension,
} from '../../../engine/index';
import { useSheet } from '../../store/context';
import { offerOf, titleOf } from '../shared/offer';
import { Labelled, Pick, type PickOption } from '../shared/pick';
import { Tick } from '../shared/tick';
import { Typed } from '../shared/typed';
import { fitChart, type Offer, resultsOf, sampledOf, shownOf, tablesOf, tracesOf } from './fit';
import { chartKindTexts, partBarTitles } from './words';

const KINDS = Object.keys(chartKindTexts) as ChartCell['chart'][];

/** Kind, source, what across, what up, one line for each what, title and limits of a chart. */
export function ChartForm({ cell }: { cell: ChartCell }) {
  const sheet = useSheet();
  const offer = offerOf(sheet);
  const needs = chartNeeds[cell.chart];
  const source = chartSource(cell);
  const change = (to: Partial<ChartCell>): void => sheet.changeCell({ ...cell, ...to });
  const refit = (to: Partial<ChartCell>): void => sheet.changeCell(fitChart({ ...cell, ...to }, offer));
  const sweep = sampledOf(cell.chart, offer).find((each) => each.name === cell.series);
  const title = (path: string): string => sheet.name(path)?.title ?? path;
  const axes = (sweep?.kind === 'trial_series' ? sweep.axes : []).map(
    ({ of }): PickOption => ({ value: of, title: title(of) }),
  );
  const results = resultsOf(cell.chart, sweep).map((path): PickOption => ({ value: path, title: title(path) }));
  const columns = offer.traces.find((each) => each.path === cell.of)?.columns ?? [];
  const id = (part: string): string => `${cell.id}-${part}`;
  return (
    <>
      <div class="set-up-fields">
        <Pick
          id={id('kind')}
          label="Kind"
          value={cell.chart}
          describedBy={id('kind-doc')}
          options={KINDS.map((kind) => ({ value: kind, title: chartKindTexts[kind].title }))}
          onPick={(kind) => refit({ chart: kind as ChartCell['chart'] })}
        />
        <Labelled id={id('title')} label="Title">
          <Typed id={id('title')} text={cell.title} onDone={(title) => change({ title })} />
        </Labelled>
      </div>
      <p class="aside" id={id('kind-doc')}>
        {chartKindTexts[cell.chart].doc}
      </p>
      <div class="set-up-fields">
        <Pick
          id={id('from')}
          label="Drawn from"
          value={source === 'sweep' ? `sweep ${cell.series}` : `of ${cell.of ?? ''}`}
          options={sources(cell, offer)}
          none="nothing yet"
          onPick={(picked) => {
            const [by, ...name] = picked.split(' ');
            refit(by === 'sweep' ? { series: name.join(' '), of: '' } : { of: name.join(' ') });
          }}
        />
        {source === 'sweep' && needs.across !== 'nothing' && (
          <Pick
            id={id('across')}
            label="Across"
            value={cell.across}
            options={needs.across === 'axis' ? axes : results}
            onPick={(across) => change(across === cell.lines ? { across, lines: cell.across } : { across })}
          />
        )}
        {needs.across === 'column' && (
          <Pick
            id={id('across')}
            label="Across"
            value={cell.across === '' ? (columns[0]?.name ?? '') : cell.across}
            options={columns.map(({ name, title }) => ({ value: name, title }))}
            onPick={(across) => refit({ across })}
          />
        )}
        {source === 'sweep' && needs.lines !== 'nothing' && (
          <Pick
            id={id('lines')}
            label={LINES[cell.chart] ?? 'One line for each'}
            value={cell.lines}
            options={[
              ...(needs.lines === 'axis' ? [] : [{ value: '', title: 'nothing: only one' }]),
              ...axes.filter((axis) => needs.across !== 'axis' || axis.value !== cell.across),
            ]}
            onPick={(lines) => change({ lines })}
          />
        )}
      </div>
      {needs.up > 0 && <Shown cell={cell} offer={offer} results={results} onShow={(up) => change({ up })} />}
      {needs.together && cell.up.length > 1 && (
        <div class="ticks">
          <Tick on={cell.together ?? false} onChange={(together) => change({ together })}>
            Results of one unit in one picture
          </Tick>
        </div>
      )}
      <Limits cell={cell} onLimits={(checks) => sheet.changeCell(checks ? { ...cell, checks } : without(cell))} />
    </>
  );
}

/** What the second axis is called, by kind. */
const LINES: Readonly<Partial<Record<ChartCell['chart'], string>>> = {
  bars: 'One bar for each',
  contour: 'Upward',
  carpet: 'Second axis',
  scatter: 'One sign for each',
};

const without = ({ checks: _, ...cell }: ChartCell): ChartCell => cell;

function sources({ chart }: ChartCell, offer: Offer): PickOption[] {
  const { from, spread } = chartNeeds[chart];
  const group = (title: string): { group?: string } => (from.length > 1 || spread === 'too' ? { group: title } : {});
  return [
    ...(from.includes('sweep')
      ? sampledOf(chart, offer).map((each) => ({
          ...{ value: `sweep ${each.name}`, title: titleOf(each) },
          ...group(each.kind === 'trial_series' ? 'Trial series' : 'Tolerances'),
        }))
      : []),
    ...(from.includes('parts')
      ? tablesOf(offer).map((each) => ({ value: `of ${each.name}`, title: titleOf(each), ...group('Parts') }))
      : []),
    ...(from.includes('trace')
      ? tracesOf(offer, chart).map(({ path, title }) => ({ value: `of ${path}`, title }))
      : []),
  ];
}

interface ShownProps {
  readonly cell: ChartCell;
  readonly offer: Offer;
  readonly results: readonly PickOption[];
  onShow(up: readonly string[]): void;
}

/** What is shown: one of a list where the kind takes one only, else any of them. */
function Shown({ cell, offer, results, onShow }: ShownProps) {
  const source = chartSource(cell);
  const needs = chartNeeds[cell.chart];
  const trace = offer.traces.find((each) => each.path === cell.of);
  const options =
    source === 'parts'
      ? PART_BARS.map((name) => ({ value: name, title: partBarTitles[name] ?? name }))
      : source === 'trace'
        ? shownOf(trace, cell).map(({ name, title }) => ({ value: name, title }))
        : results.filter((each) => needs.across !== 'result' || each.value !== cell.across);
  if (needs.up === 1) {
    return (
      <div class="set-up-fields">
        <Pick
          id={`${cell.id}-up`}
          label="Shown"
          value={cell.up[0] ?? ''}
          options={options}
          onPick={(path) => onShow([path])}
        />
      </div>
    );
  }
  const listed = [...options, ...cell.up.filter((path) => !options.some((each) => each.value === path)).map(asThere)];
  const full = cell.up.length >= needs.up;
  return (
    <fieldset class="ticks">
      <legend>{source === 'trace' ? 'Shown' : 'Shown, one above the other'}</legend>
      {listed.map(({ value, title }) => (
        <Tick
          key={value}
          on={cell.up.includes(value)}
          onChange={(on) => {
            if (on && full) return;
            onShow(on ? [...cell.up, value] : cell.up.filter((each) => each !== value));
          }}
        >
          {title}
        </Tick>
      ))}
      {full && <p class="aside">{needs.up} is the most that one chart shows. Remove one before you add another.</p>}
    </fieldset>
  );
}

const asThere = (path: string): PickOption => ({ value: path, title: `${path} (not there)` });

/** Which checks have their limits drawn. Nothing chosen in the file: all that watch what is shown. */
function Limits({ cell, onLimits }: { cell: ChartCell; onLimits(checks: readonly string[] | undefined): void }) {
  const sheet = useSheet();
  const offered = sheet.checks.value.filter((check) => mayLimit(cell, check, sheet));
  if (offered.length === 0) return null;
  const source = chartSource(cell);
  const own = (check: CheckCell): boolean => source === 'sweep' && [...cell.up, cell.across].includes(check.of.trim());
  const on = (check: CheckCell): boolean => cell.checks?.includes(check.name) ?? own(check);
  return (
    <fieldset class="ticks">
      <legend>Limits drawn in</legend>
      {offered.map((check) => (
        <Tick
          key={check.id}
          on={on(check)}
          onChange={(now) => {
            const names = offered.filter((each) => (each === check ? now : on(each))).map((each) => each.name);
            const usual = offered.every((each) => names.includes(each.name) === own(each));
            onLimits(usual ? undefined : names);
          }}
        >
          {check.title === '' ? check.name : check.title}
        </Tick>
      ))}
    </fieldset>
  );
}

/** Whether the limits of a check can stand in a chart: it watches a result that the chart has, or a quantity of that kind. */
function mayLimit(cell: ChartCell, check: CheckCell, sheet: ReturnType<typeof useSheet>): boolean {
  const watched = sheet.name(check.of.trim());
  if (!watched) return false;
  switch (chartSource(cell)) {
    case 'sweep': {
      // A share has no limits.
      if (chartNeeds[cell.chart].spread === 'only') return false;
      const wanted = resultsOf(
        cell.chart,
        sampledOf(cell.chart, offerOf(sheet)).find((each) => each.name === cell.series),
      );
      // Only a picture over two axes can show a limit on another result than those that it shows.
      const shown = cell.chart === 'contour' ? wanted : [...cell.up, cell.across];
      return shown.includes(watched.path);
    }
    case 'trace': {
      const trace = cell.of ? sheet.traces.of(cell.of).value : undefined;
      const columns = trace?.columns.filter((each) => cell.up.includes(each.name)) ?? [];
      return columns.some(({ dimension }) => sameDimension(dimension, watched.dimension));
    }
    case 'parts':
      return false;
  }
}
