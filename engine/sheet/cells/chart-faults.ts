import { inSentence } from '../called';
import type { ChartCell, CheckCell, PartsCell, SpreadCell, SweepCell } from '../document';
import { allNamed, named, quoted } from '../named';
import { cellsOf } from '../sheets';
import type { Builder } from '../specs';
import { chartNeeds, chartSource, PART_BARS } from './chart-kinds';

type Say = (message: string) => void;

/** Says what a chart asks for and can't have. Called when every name is laid. */
export function checkChart(cell: ChartCell, builder: Builder): void {
  const say: Say = (message) => builder.fault({ cell: cell.id, path: cell.name, message });
  switch (chartSource(cell)) {
    case 'sweep':
      checkSweep(cell, builder, say);
      break;
    case 'parts':
      checkParts(cell, builder, say);
      break;
    case 'trace':
      checkTrace(cell, builder, say);
      break;
  }
  checkLimits(cell, builder, say);
}

function checkSweep(cell: ChartCell, builder: Builder, say: Say): void {
  const needs = chartNeeds[cell.chart];
  const cells = cellsOf(builder.document);
  const sweeps = needs.spread === 'only' ? [] : cells.filter((each): each is SweepCell => each.kind === 'trial_series');
  const spreads = needs.spread ? cells.filter((each): each is SpreadCell => each.kind === 'tolerances') : [];
  const source = [...sweeps, ...spreads].find((each) => each.name === cell.series);
  if (!source) {
    const word = needs.spread === 'only' ? 'tolerances' : 'trial series';
    const names = [...sweeps, ...spreads].map((each) => each.name);
    const list =
      names.length === 0
        ? 'There is none yet; add one.'
        : [listOf('trial series', sweeps), listOf('tolerances', spreads)].filter(Boolean).join(' ');
    say(
      cell.series === ''
        ? `${named(cell.name)} has no ${word} to show. ${list}`
        : `${named(cell.name)} shows the ${word} “${cell.series}”: there is nothing of that name. ${list}${builder.meant(cell.series, names, named)}`,
    );
    return;
  }
  if (source.kind === 'trial_series') checkAxes(cell, source, builder, say);
  else if (cell.lines !== '') {
    say(
      `${named(cell.name)} has a sign for each ${named(cell.lines)}, and ${named(source.name)} has no axes. Take nothing for the signs.`,
    );
  }
  const differs = source.kind === 'tolerances' && needs.spread === 'too' ? source.rows.map((row) => row.of) : [];
  const computed = [...source.wanted, ...differs];
  const results = [...(needs.across === 'result' ? [cell.across] : []), ...cell.up];
  const wrong = results.find((path) => !computed.includes(path));
  if (wrong !== undefined) {
    say(
      `${named(cell.name)} shows ${quoted(wrong)}, which ${named(source.name)} does not compute. It computes ${allNamed(computed)}.`,
    );
  }
  checkCount(cell, `result of ${named(source.name)}`, say);
}

const listOf = (word: string, cells: readonly { readonly name: string }[]): string =>
  cells.length === 0 ? '' : `The ${word} are ${allNamed(cells.map((each) => each.name))}.`;

function checkAxes(cell: ChartCell, sweep: SweepCell, builder: Builder, say: Say): void {
  const needs = chartNeeds[cell.chart];
  const axes = sweep.axes.map((axis) => axis.of);
  const list = `The axes of ${named(sweep.name)} are ${allNamed(axes)}.`;
  if (needs.lines === 'axis' && axes.length < 2) {
    say(`${named(cell.name)} needs two axes and ${named(sweep.name)} has ${axes.length}. Give it a second one.`);
    return;
  }
  const asked = [
    ...(needs.across === 'axis' ? [cell.across] : []),
    ...(needs.lines === 'axis' || (needs.lines === 'axis or nothing' && cell.lines !== '') ? [cell.lines] : []),
  ];
  const wrong = asked.find((path) => !axes.includes(path));
  if (wrong !== undefined) {
    say(
      wrong === ''
        ? `${named(cell.name)} lacks an axis of ${named(sweep.name)}. ${list}`
        : `${named(cell.name)} needs ${quoted(wrong)} as an axis of ${named(sweep.name)}. ${list}`,
    );
    return;
  }
  if (asked.length === 2 && asked[0] === asked[1]) {
    say(
      `${named(cell.name)} has ${named(cell.across)} both across and as the second axis. Take two different ones. ${list}`,
    );
  }
  const choice = needs.numbers && asked.find((path) => builder.find(path)?.type?.kind === 'option');
  if (choice) {
    say(
      `${named(cell.name)} draws lines between the values of ${named(choice)}, which is a choice. Take an axis of numbers. ${list}`,
    );
  }
}

function checkParts(cell: ChartCell, builder: Builder, say: Say): void {
  const tables = cellsOf(builder.document).filter((each): each is PartsCell => each.kind === 'parts');
  const of = cell.of ?? '';
  if (!tables.some((each) => each.name === of)) {
    const names = tables.map((each) => each.name);
    const list =
      names.length === 0 ? 'There is none yet; add one.' : `The tables of weight and balance are ${allNamed(names)}.`;
    say(
      `${named(cell.name)} shows the table of weight and balance “${of}”: there is none of that name. ${list}${builder.meant(of, names, named)}`,
    );
    return;
  }
  if (chartNeeds[cell.chart].up === 0) return;
  const known: readonly string[] = PART_BARS;
  const wrong = cell.up.find((name) => !known.includes(name));
  if (wrong !== undefined) {
    say(
      `${named(cell.name)} shows “${wrong}” of each part. A chart can show ${known.map((name) => name.replaceAll('_', ' ')).join(', ')}.`,
    );
  }
  checkCount(cell, 'number of the parts, such as mass', say);
}

/** What runs along something, as far as it is spoken of. */
interface Runs {
  readonly title: string;
  readonly columns: Readonly<Record<string, { readonly title: string; readonly unit: string }>>;
}

function checkTrace(cell: ChartCell, builder: Builder, say: Say): void {
  const of = cell.of ?? '';
  const { round, across } = chartNeeds[cell.chart];
  const runs = round ? 'runs around the lap' : 'runs along a line';
  const traces = new Map<string, Runs>(
    cellsOf(builder.document).flatMap((each) => {
      const block = each.kind === 'model' ? builder.blocks.get(each.of) : undefined;
      return Object.entries(block?.traces ?? {}).flatMap(([name, trace]) =>
        !trace.outlines && (!round || Object.values(trace.columns)[0]?.unit === '°')
          ? [[`${each.name}.${name}`, trace] as const]
          : [],
      );
    }),
  );
  const trace = traces.get(of);
  const titleOf = (path: string): string => {
    const title = traces.get(path)?.title;
    return title === undefined ? path : `“${title}” of ${named(path.slice(0, path.indexOf('.')))}`;
  };
  if (!trace) {
    const names = [...traces.keys()];
    const list =
      names.length === 0
        ? `No piece of this design has anything that ${runs}.`
        : `There is ${names.map(titleOf).join(', ')}.`;
    say(
      of === ''
        ? `${named(cell.name)} has nothing to show. ${list}`
        : `${named(cell.name)} shows “${of}”, which is nothing that ${runs}. ${list}${builder.meant(of, names, titleOf)}`,
    );
    return;
  }
  const all = Object.keys(trace.columns);
  const titleOfColumn = (name: string): string => inSentence(trace.columns[name]!.title);
  const told = (columns: readonly string[]): string => columns.map(titleOfColumn).join(', ');
  const along = across === 'column' && cell.across !== '' ? cell.across : all[0]!;
  if (!all.includes(along)) {
    say(
      `${named(cell.name)} needs “${along}” of ${titleOf(of)} across. It tells ${told(all)}.${builder.meant(along, all, titleOfColumn)}`,
    );
    return;
  }
  const columns = all.filter((name) => name !== along);
  const wrong = cell.up.find((name) => !columns.includes(name));
  if (wrong !== undefined) say(`${named(cell.name)} shows “${wrong}” of ${titleOf(of)}. It tells ${told(columns)}.`);
  checkCount(cell, `of ${told(columns)}`, say);
}

function checkCount(cell: ChartCell, what: string, say: Say): void {
  const most = chartNeeds[cell.chart].up;
  if (cell.up.length === 0) {
    say(`${named(cell.name)} shows nothing. Take ${most === 1 ? 'one' : 'at least one'} ${what}.`);
  } else if (cell.up.length > most) {
    say(`${named(cell.name)} shows ${cell.up.length} results. ${most === 1 ? 'One is' : `1 to ${most} are`} allowed.`);
  }
}

function checkLimits(cell: ChartCell, builder: Builder, say: Say): void {
  const checks = cellsOf(builder.document).filter((each): each is CheckCell => each.kind === 'check');
  const names = checks.map((each) => each.name);
  const wrong = cell.checks?.find((name) => !names.includes(name));
  if (wrong === undefined) return;
  const list = names.length === 0 ? 'There are no checks yet.' : `The checks are ${allNamed(names)}.`;
  say(
    `${named(cell.name)} shows the limits of “${wrong}”: there is no check of that name. ${list}${builder.meant(wrong, names, named)}`,
  );
}
