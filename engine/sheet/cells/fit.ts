import * as v from 'valibot';
import { FIT_ERRORS, type FitCell, type LogCell } from '../document';
import { allNamed, named, quoted } from '../named';
import { cellsOf } from '../sheets';
import type { Builder } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf } from './kind';
import { isSet, logResults } from './log';
import { mapFields, mapRows } from './rows';

/** More factors than this no log of laps can tell apart. */
const MOST_FACTORS = 8;

/** Results of the log that a fit counts. */
export const fittedResults = (cell: FitCell, measured: readonly string[]): readonly string[] =>
  cell.wanted.length === 0 ? measured : measured.filter((path) => cell.wanted.includes(path));

/** Factors of the design, from a log. */
export const fitCell: CellKindOf<FitCell> = {
  kind: 'fit',
  schema: v.strictObject({
    ...baseEntries('fit'),
    log: v.string(),
    factors: v.array(v.string()),
    wanted: v.array(v.string()),
    errors: v.picklist(FIT_ERRORS),
  }),
  owns: (cell) => [cell.name],
  texts: () => [],
  put: () => undefined,
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { path }) =>
    mapFields(cell, {
      log: cell.log === '' ? '' : path(cell.log),
      factors: mapRows(cell.factors, path),
      wanted: mapRows(cell.wanted, path),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    builder.later(() => check(cell, builder));
  },
};

function check(cell: FitCell, builder: Builder): void {
  const say = (message: string) => builder.fault({ cell: cell.id, path: cell.name, message });
  const logs = cellsOf(builder.document).filter((each): each is LogCell => each.kind === 'log');
  const log = logs.find((each) => each.name === cell.log);
  if (!log) {
    const names = logs.map((each) => each.name);
    const list = names.length === 0 ? 'There is none yet; add one.' : `The logs are ${allNamed(names)}.`;
    say(
      cell.log === ''
        ? `${named(cell.name)} has no log to be fitted to. ${list}`
        : `${named(cell.name)} is fitted to the log “${cell.log}”: there is none of that name. ${list}${builder.meant(cell.log, names, named)}`,
    );
    return;
  }
  if (cell.factors.length < 1 || cell.factors.length > MOST_FACTORS) {
    say(
      cell.factors.length === 0
        ? `${named(cell.name)} has no factor to find. Add one under “Factors”, such as the drag factor of level flight.`
        : `${named(cell.name)} has ${cell.factors.length} factors. At most ${MOST_FACTORS} are allowed.`,
    );
  }
  for (const [k, path] of cell.factors.entries()) {
    const reach = builder.find(path);
    if (!reach) say(`${named(cell.name)} fits “${path}”: nothing has that name.${builder.meant(path)}`);
    else if (!isSet(reach) || reach.type?.kind === 'option') {
      say(`${named(cell.name)} fits ${named(path)}. A factor is a variable or a number typed in the model.`);
    } else if (cell.factors.indexOf(path) < k)
      say(`${named(cell.name)} fits ${named(path)} twice. Remove one of them.`);
    else if (log.columns.some((column) => column.of === path)) {
      say(
        `${named(cell.name)} fits ${named(path)}, which the log says for each flight. Remove it from the factors or from ${named(log.name)}.`,
      );
    }
  }
  const measured = logResults(log, (path) => {
    const reach = builder.find(path);
    return reach !== undefined && isSet(reach);
  });
  const strange = cell.wanted.find((path) => !measured.includes(path));
  if (strange !== undefined) {
    const has = measured.length === 0 ? 'It has measured nothing yet.' : `It has ${allNamed(measured)}.`;
    say(`${named(cell.name)} counts ${quoted(strange)}, which ${named(log.name)} has not measured. ${has}`);
  }
}
