import type { LeversCell } from '../../sheet/document';
import { leverEffect, leverRatio, rankLevers } from '../../sheet/rank-levers';
import type { LeverChange, NameInfo, SweepProgress } from '../../terms/index';
import { differenceFromSI, formatNumber, formatQuantity } from '../../units/index';
import { plain, textOf } from '../command/values';

type Names = ReadonlyMap<string, NameInfo>;

/** The changes of a cell of levers in the order of their rank. */
export function rankedAnswer(cell: LeversCell, progress: SweepProgress): LeversAnswer {
  const at = cell.rank === '' ? 0 : cell.wanted.indexOf(cell.rank);
  const per = cell.per === '' ? undefined : cell.wanted.indexOf(cell.per);
  return { progress, at, per, order: rankLevers(progress, at, per) };
}

export interface LeversAnswer {
  readonly progress: SweepProgress;
  /** Result that they are ranked by, and the one that it is told for each unit of. */
  readonly at: number;
  readonly per: number | undefined;
  readonly order: readonly number[];
}

/** "tip_weight from 20 g to 25 g: flight.pull −0.05 N, flight.lap_time +0.001 s". */
export function leversTable({ progress, at, per, order }: LeversAnswer, names: Names): string {
  const { wanted } = progress;
  const head =
    per === undefined ? wanted[at]! : `${wanted[at]} for each ${unitOf(names, wanted[per]!)} of ${wanted[per]}`;
  const lines = order.map((k) => {
    const change = progress.levers!.changes[k]!;
    const reason = progress.sentences[progress.why[k]! - 1];
    if (reason !== undefined) return `${changeText(change, names)}: no answer. ${reason}\n`;
    const effects = wanted.map((path, w) => `${path} ${signed(leverEffect(progress, w, k), names.get(path)!)}`);
    return `${changeText(change, names)}: ${effects.join(', ')}${ratioText(progress, at, per, k, names)}\n`;
  });
  return `Ranked by ${head}\n${lines.join('')}`;
}

const unitOf = (names: Names, path: string): string => names.get(path)!.unit || '1';

function ratioText(progress: SweepProgress, at: number, per: number | undefined, k: number, names: Names): string {
  if (per === undefined) return '';
  const ratio = leverRatio(progress, at, per, k);
  const [one, other] = [unitOf(names, progress.wanted[at]!), unitOf(names, progress.wanted[per]!)];
  return Number.isNaN(ratio)
    ? `; no change of ${progress.wanted[per]}`
    : `; ${ratioIn(ratio, one, other)} ${one}/${other}`;
}

const ratioIn = (ratio: number, one: string, other: string): string =>
  formatNumber(differenceFromSI(ratio, one) / differenceFromSI(1, other));

const changeText = ({ path, from, to }: LeverChange, names: Names): string => {
  const info = names.get(path)!;
  return `${path} from ${textOf(info, from)} to ${textOf(info, to)}`;
};

const signed = (si: number, { unit, suffix }: NameInfo): string =>
  formatQuantity(si, unit, { suffix, difference: true, sign: true });

export const leversData = ({ progress, order }: LeversAnswer) => ({
  wanted: progress.wanted,
  present: progress.levers!.present.map(plain),
  changes: order.map((k) => {
    const { path, from, to } = progress.levers!.changes[k]!;
    const values = progress.columns.map((column) => plain(column[k]!));
    const reason = progress.sentences[progress.why[k]! - 1];
    return { path, from, to, values, ...(reason === undefined ? {} : { reason }) };
  }),
});
