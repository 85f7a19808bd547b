import * as v from 'valibot';
import { sameDimension, TIME } from '../../units/index';
import type { LogCell, LogColumn } from '../document';
import { named } from '../named';
import type { Builder, Reach } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { layLineSets, lineSetSchema, lineSetTexts, putInLineSet, rewriteLineSet } from './log-lines';
import { layRow, logRowPath, logRowSchema, putInRow, ROW_NAMES, rewriteRow, rowTexts } from './log-rows';
import { mapFields, mapRows, withRow } from './rows';

export { lineSetPath, pullTestPath } from './log-lines';
export { logRowPath } from './log-rows';

/** More rows than this are no longer something that a person typed. */
export const MOST_LOG_ROWS = 300;
/** What a column may not be called: what it says would stand at the place of something else. */
export const isLogName = (name: string): boolean => ROW_NAMES.has(name) || /^(stopwatch|row\d*|set\d*)$/.test(name);
const SETS: ReadonlySet<Reach['kind']> = new Set(['variable', 'choice', 'field', 'result']);

export const logErrorPath = (cell: LogCell, column: LogColumn): string => `${cell.name}.${column.name}.error`;

/** Whether what a column is of is set by a person, and so a condition of the day and no measurement. */
export const isSet = (reach: Pick<Reach, 'kind' | 'settable'>): boolean => reach.settable && SETS.has(reach.kind);

/** Results that a log measured, the time of a lap first. `settable`: whether a path is set by a person. */
export const logResults = (cell: LogCell, settable: (path: string) => boolean): readonly string[] => [
  ...(cell.time === '' ? [] : [cell.time]),
  ...cell.columns.map((column) => column.of).filter((of) => !settable(of)),
];

/** What was measured on flights. */
export const logCell: CellKindOf<LogCell> = {
  kind: 'log',
  schema: v.strictObject({
    ...baseEntries('log'),
    time: v.string(),
    stopwatch: v.string(),
    columns: v.array(v.strictObject({ name: v.string(), of: v.string(), error: v.string() })),
    rows: v.array(logRowSchema),
    line_sets: v.array(lineSetSchema),
    taken: v.array(
      v.strictObject({ date: v.string(), of: v.string(), before: v.string(), after: v.string(), note: v.string() }),
    ),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) => [
    { path: `${cell.name}.stopwatch`, text: cell.stopwatch },
    ...cell.columns.map((column) => ({ path: logErrorPath(cell, column), text: column.error })),
    ...cell.rows.flatMap((row, k) => rowTexts(cell, row, k)),
    ...lineSetTexts(cell),
  ],
  put(cell, path, text) {
    if (path === `${cell.name}.stopwatch`) return { ...cell, stopwatch: text };
    for (const [k, column] of cell.columns.entries()) {
      if (path !== logErrorPath(cell, column)) continue;
      return { ...cell, columns: withRow(cell.columns, k, { ...column, error: text }) };
    }
    for (const [k, row] of cell.rows.entries()) {
      const key = path.startsWith(`${logRowPath(cell, k)}.`) ? path.slice(logRowPath(cell, k).length + 1) : '';
      const changed = key === '' ? undefined : putInRow(cell, row, key, text);
      if (changed) return { ...cell, rows: withRow(cell.rows, k, changed) };
    }
    const lineSets = putInLineSet(cell, path, text);
    return lineSets && { ...cell, line_sets: lineSets };
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, change) =>
    mapFields(cell, {
      time: cell.time === '' ? '' : change.path(cell.time),
      stopwatch: change.formula(cell.stopwatch),
      columns: mapRows(cell.columns, (column) =>
        mapFields(column, { of: change.path(column.of), error: change.formula(column.error) }),
      ),
      rows: mapRows(cell.rows, (row) => rewriteRow(cell, row, change)),
      line_sets: mapRows(cell.line_sets, (set) => rewriteLineSet(set, change)),
      taken: mapRows(cell.taken, (taken) => mapFields(taken, { of: change.path(taken.of) })),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    builder.text({
      ...{ cell: cell.id, path: `${cell.name}.stopwatch`, text: cell.stopwatch, kind: 'limit', detail: true },
      ...{ title: 'Measuring error of a stopped time', doc: 'Blank: not measured.' },
      ...{ unit: 's', wants: { dimension: TIME }, blank: Number.NaN },
    });
    const columns = cell.columns.filter((column) => layColumn(cell, column, builder));
    for (const [k, row] of cell.rows.slice(0, MOST_LOG_ROWS).entries()) layRow(cell, columns, row, k, builder);
    layLineSets(cell, builder);
    builder.later(() => check(cell, columns, builder));
  },
};

/** False where it can't be laid. */
function layColumn(cell: LogCell, column: LogColumn, builder: Builder): boolean {
  const path = `${cell.name}.${column.name}`;
  if (isLogName(column.name)) {
    const message = `A column of ${named(cell.name)} is called “${column.name}”, which the log itself uses. Give it another name.`;
    builder.fault({ cell: cell.id, path: cell.name, message });
    return false;
  }
  if (!builder.claim(path, cell.id)) return false;
  builder.text({
    ...{ cell: cell.id, path: `${path}.error`, text: column.error, kind: 'limit', detail: true },
    ...{
      title: `Measuring error of ${named(column.of)}`,
      like: column.of,
      unit: '',
      wants: 'anything',
      blank: Number.NaN,
    },
  });
  return true;
}

function check(cell: LogCell, columns: readonly LogColumn[], builder: Builder): void {
  const say = (message: string) => builder.fault({ cell: cell.id, path: cell.name, message });
  if (cell.rows.length > MOST_LOG_ROWS) {
    say(
      `${named(cell.name)} has ${cell.rows.length} rows. At most ${MOST_LOG_ROWS} are allowed: put the older ones into a log of their own.`,
    );
  }
  if (cell.time !== '') checkTime(cell, builder, say);
  for (const [k, { of, error }] of columns.entries()) {
    const reach = builder.find(of);
    const first = columns.findIndex((column) => column.of === of);
    if (!reach) say(`${named(cell.name)} has a column of “${of}”: nothing has that name.${builder.meant(of)}`);
    else if (reach.kind === 'curve')
      say(`${named(cell.name)} has a column of ${named(of)}, which is a curve. Take a single number.`);
    else if (of === cell.time || first < k)
      say(`${named(cell.name)} has two columns of ${named(of)}. Remove one of them.`);
    else if (!isSet(reach) && reach.type?.kind === 'option') {
      say(
        `${named(cell.name)} has a column of ${named(of)}, which is no number and nothing that is set. Take another.`,
      );
    } else if (!isSet(reach) && error.trim() === '') {
      say(
        `${named(of)} has no measuring error in ${named(cell.name)}. Type how far a reading may be off, such as “2 N” on a spring scale.`,
      );
    }
  }
}

function checkTime(cell: LogCell, builder: Builder, say: (message: string) => void): void {
  const reach = builder.find(cell.time);
  const type = reach?.type;
  if (!reach)
    say(
      `${named(cell.name)} compares lap times with “${cell.time}”: nothing has that name.${builder.meant(cell.time)}`,
    );
  else if (isSet(reach) || (type && !(type.kind === 'quantity' && sameDimension(type.dimension, TIME)))) {
    say(
      `${named(cell.name)} compares lap times with ${named(cell.time)}, which is no result that is a time. Take one such as the lap time of level flight.`,
    );
  } else if (cell.stopwatch.trim() === '') {
    say(
      `${named(cell.name)} has no measuring error for times. Type how far a stopped time may be off, such as “0.05 s”.`,
    );
  }
}
