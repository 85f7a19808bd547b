import { csvLine } from '../../library/csv';
import type { NameInfo, SweepProgress } from '../../terms/index';
import { plain } from '../command/values';
import { entry, heading, REASON_HEADING } from '../tables/csv';
import { positions } from './lattice';

/** A sweep as RFC 4180 text: one design a row, axes first, in the units of the sheet; why there is no answer comes last. */
export function sweepTable(progress: SweepProgress, names: ReadonlyMap<string, NameInfo>): string {
  const { axes, wanted, columns, why, sentences } = progress;
  const paths = [...axes.map((axis) => axis.path), ...wanted];
  const rows = [[...paths.map((path) => heading({ path }, names.get(path))), REASON_HEADING]];
  for (const [sample, at] of samplesOf(progress)) {
    rows.push([
      ...axes.map((axis, a) => entry(names.get(axis.path), axis.values[at[a]!]!)),
      ...wanted.map((path, w) => entry(names.get(path), columns[w]![sample]!)),
      why[sample] === 0 ? '' : sentences[why[sample]! - 1]!,
    ]);
  }
  return rows.map(csvLine).join('');
}

/** A sweep as plain data in SI units, options by name. */
export function sweepData(
  { axes, wanted, columns, why, sentences }: SweepProgress,
  names: ReadonlyMap<string, NameInfo>,
) {
  return {
    axes: axes.map(({ path, values }) => {
      const options = names.get(path)!.options;
      return { name: path, values: Array.from(values, (value) => options?.[value] ?? value) };
    }),
    columns: Object.fromEntries(wanted.map((path, w) => [path, Array.from(columns[w]!, plain)])),
    reasons: Array.from(why, (code) => (code === 0 ? '' : sentences[code - 1]!)),
  };
}

function* samplesOf({ axes, total }: SweepProgress): Iterable<[sample: number, at: Uint32Array]> {
  const counts = axes.map((axis) => axis.values.length);
  const at = new Uint32Array(counts.length);
  for (let sample = 0; sample < total; sample++) {
    positions(sample, counts, at);
    yield [sample, at];
  }
}
