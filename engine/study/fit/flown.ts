import { calledIn } from '../../sheet/called';
import { logResults } from '../../sheet/cells/index';
import type { LogCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { withTitles } from '../../sheet/named';
import { cellsOf } from '../../sheet/sheets';
import { readLog } from './log';
import { predict, resultsOf } from './predict';
import type { FlownAnswer } from './told';

type Answer = Omit<FlownAnswer, 'revision'>;

/** What was measured on the flights of a log, beside what the design as it stands would have done on them. */
export function* flownSteps(live: Live, name: string): Generator<void, Answer, void> {
  const say = (message: string): string => withTitles(message, calledIn(live.compiled));
  const { document, faults, names } = live.compiled;
  const log = cellsOf(document).find((each): each is LogCell => each.kind === 'log' && each.name === name);
  const fault = faults.find((each) => each.cell === log?.id);
  if (fault || !log) return faultyFlown(name, fault?.message ?? `${name} is no log.`);
  const settable = new Set(names.filter((info) => info.settable).map((info) => info.path));
  const read = readLog(
    live,
    log,
    logResults(log, (path) => settable.has(path)),
  );
  if (typeof read === 'string') return faultyFlown(name, say(read));
  const rows = log.rows.length;
  const plan = { cell: { name }, log: read, factors: [] };
  const { values, reason } = yield* predict(live, plan, read.measured.length === 0 ? [] : [new Float64Array(0)], rows);
  const columns = new Map(resultsOf(plan).map((path, w) => [path, values[w]!]));
  const numbers = read.measured.map((each) => ({ ...each, predicted: columns.get(each.path)![each.row]! }));
  const silent = new Map(
    numbers.flatMap(({ row, predicted }) =>
      Number.isNaN(predicted) ? [[row, `the model has no answer there. ${reason(row)}`] as const] : [],
    ),
  );
  const strange = new Map([...silent, ...read.strange.map((each) => [each.row, each.reason] as const)]);
  return {
    ...{ log: name, state: 'settled' },
    numbers: numbers.filter(({ predicted }) => !Number.isNaN(predicted)),
    leftOut: [...strange].map(([row, why]) => ({ row, why: say(why) })),
  };
}

export const faultyFlown = (log: string, message: string): Answer => ({
  ...{ log, state: 'fault', message, numbers: [], leftOut: [] },
});
