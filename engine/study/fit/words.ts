import type { Determination, LeastSquares } from '../../numerics/index';
import { calledIn } from '../../sheet/called';
import type { LogCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { allNamed, named, withTitles } from '../../sheet/named';
import { cellsOf } from '../../sheet/sheets';
import { formatQuantity } from '../../units/index';
import type { Measured } from './log';
import type { FitPlan } from './plan';
import type { FittedFactor } from './told';

/** A measured number that the fit could not count. */
export interface LeftOut extends Measured {
  readonly reason: string;
  /** It is another design that was flown. */
  readonly other?: boolean;
}

export interface FitTold {
  readonly live: Live;
  readonly plan: FitPlan;
  readonly found: LeastSquares;
  /** Of the factors `free`, by their places among all. */
  readonly told: Determination;
  readonly free: readonly number[];
  readonly fitted: readonly FittedFactor[];
  readonly correlation: readonly (readonly number[])[];
  readonly counted: readonly Measured[];
  readonly freedom: number;
  readonly leftOut: readonly LeftOut[];
}

/** Beyond this correlation two factors are hardly told apart. */
const HARDLY = 0.95;
/** A component of a blind direction below this doesn't take part to speak of. */
const TAKES_PART = 0.05;

/** All that is to be known of a fit beside its numbers, the weightiest first. */
export const fitSentences = (told: FitTold): string[] =>
  allSentences(told).map((sentence) => withTitles(sentence, calledIn(told.live.compiled)));

const allSentences = (told: FitTold): string[] => [
  ...statusSentences(told),
  ...silentSentences(told),
  ...blindSentences(told),
  ...endSentences(told),
  ...hardlySentences(told),
  ...spareSentences(told),
  ...leftOutSentences(told),
];

function statusSentences({ found }: FitTold): string[] {
  switch (found.status) {
    case 'settled':
      return [];
    case 'stuck':
      return [
        'The fit came to a stop before the least: a step further and a flight of the log has no answer in the model, or its answer jumps. Look at the flights with the largest residuals.',
      ];
    case 'not settled':
      return [
        `The fit did not settle in ${found.iterations} steps. Type values nearer to what you expect into the factors, or take fewer factors.`,
      ];
    case 'no answer':
      return [
        'A small change of a factor leaves a flight of the log without an answer in the model, so the fit can’t begin. Type other values into the factors to begin with.',
      ];
  }
}

function silentSentences({ told, free, plan }: FitTold): string[] {
  const silent = free.filter((_, at) => told.silent[at]).map((j) => plan.factors[j]!.path);
  if (silent.length === 0) return [];
  const [are, them] = silent.length === 1 ? ['is', 'it'] : ['are', 'them'];
  return [
    `${list(silent)} ${are} not determined: nothing that was measured changes with ${them}. Remove ${them}, or log a result that ${them === 'it' ? 'it moves' : 'they move'}.`,
  ];
}

function blindSentences({ told, free, plan, counted }: FitTold): string[] {
  if (told.blind.length === 0) return [];
  const involved = [...free.keys()].filter((at) => told.blind.some((each) => Math.abs(each[at]!) > TAKES_PART));
  const paths = involved.map((at) => plan.factors[free[at]!]!.path);
  const heard = free.filter((_, at) => !told.silent[at]).length;
  if (counted.length < heard) {
    const numbers = counted.length === 1 ? 'One measured number is' : `${counted.length} measured numbers are`;
    return [
      `${numbers} too few for ${heard} factors: ${list(paths)} are not determined. Log more flights, or remove a factor.`,
    ];
  }
  if (involved.length === 1) {
    return [
      `The log does not determine ${named(paths[0]!)}: its standard error would be larger than the factor itself. Log more flights, or a result that it moves more.`,
    ];
  }
  const [first] = told.blind as [readonly number[]];
  const [a, b] = involved as [number, number];
  const why =
    told.blind.length > 1 || involved.length !== 2
      ? 'together they can change and leave everything measured as it is'
      : first[a]! * first[b]! < 0
        ? 'what a rise of one does, a rise of the other does as well'
        : 'what a rise of one does, a rise of the other takes back';
  return [
    `The log cannot tell ${list(paths)} apart: ${why}. Remove one of them, or log flights in which they work differently (other lines, another result).`,
  ];
}

function endSentences({ fitted, plan, live }: FitTold): string[] {
  const infos = new Map(live.compiled.names.map((info) => [info.path, info]));
  return fitted.flatMap((factor, j) => {
    if (!factor.end) return [];
    const { unit = '', suffix = '' } = infos.get(factor.path) ?? {};
    const at = formatQuantity(plan.factors[j]![factor.end], unit, { suffix });
    const word = factor.end === 'low' ? 'least' : 'greatest';
    return [
      `${named(factor.path)} stands at the ${word} value allowed, ${at}, and would go on beyond it: the log does not fit the model there. Look at the log, or at what else of the design may be off.`,
    ];
  });
}

function hardlySentences({ fitted, correlation }: FitTold): string[] {
  const sentences: string[] = [];
  for (let a = 0; a < fitted.length; a++) {
    for (let b = a + 1; b < fitted.length; b++) {
      const r = correlation[a]![b]!;
      if (!(Math.abs(r) > HARDLY)) continue;
      sentences.push(
        `The log hardly tells ${named(fitted[a]!.path)} and ${named(fitted[b]!.path)} apart: their correlation is ${formatQuantity(r, '', { significant: 3 })}. Each may be far off as long as the other makes up for it.`,
      );
    }
  }
  return sentences;
}

function spareSentences({ plan, freedom, told }: FitTold): string[] {
  if (freedom > 0 || plan.cell.errors !== 'scatter' || told.rank === 0) return [];
  return [
    'There is no measured number to spare, so the fit meets the log exactly and its scatter says nothing: the standard errors rest on the measuring errors as stated.',
  ];
}

function leftOutSentences({ plan, live, leftOut }: FitTold): string[] {
  const log = cellsOf(live.compiled.document).find(
    (each): each is LogCell => each.kind === 'log' && each.name === plan.cell.log,
  );
  const rows = new Map<string, { row: number; reason: string; other: boolean; paths: string[] }>();
  for (const { row, path, reason, other = false } of leftOut) {
    const key = `${row} ${reason}`;
    const known = rows.get(key);
    if (known) known.paths.push(path);
    else rows.set(key, { row, reason, other, paths: [path] });
  }
  return [...rows.values()].map(({ row, reason, other, paths }) => {
    const label = log?.rows[row]?.label ?? '';
    const flight = label === '' ? `Row ${row + 1}` : `Row ${row + 1} (${label})`;
    if (other) return `${flight} is left out with ${list(paths)}. ${reason}`;
    return `${flight} is left out with ${list(paths)}, since the model has no answer there. ${reason}`;
  });
}

/** No number of the log has an answer. */
export const notFitted = ({ cell }: FitPlan, reason: string): string =>
  `No flight of ${named(cell.log)} has an answer in the model, so there is nothing to fit. The first says: ${reason}`;

const list = (paths: readonly string[]): string =>
  paths.length < 2 ? allNamed(paths) : `${allNamed(paths.slice(0, -1))} and ${named(paths.at(-1)!)}`;
