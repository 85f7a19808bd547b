import { partsReasons } from '../../blocks/parts/results';
import { FOLD_NAMES, foldParts, momentsAboutCg, PART_STRIDE } from '../../physics/index';
import type { FoldPartsSpec, StepSpec } from '../specs';
import { type Ranged, tellBreach } from './range';

const AT_X = FOLD_NAMES.indexOf('x');

/** Adds all part rows into one body, and says what each does to the balance. */
export function foldPartsStep(spec: FoldPartsSpec): StepSpec {
  const { cell, path, fuelShare, rows, folds, moments, shares } = spec;
  const fuel = rows.map((row) => row.fuel);
  const share: Ranged = { path: `${path}.fuel`, slot: fuelShare, unit: '', range: [0, 1] };
  return {
    step: {
      key: `fold ${path}: ${rows.map((row) => row.path + (row.fuel ? ' fuel' : '') + (row.cutFrom ? ` of ${row.cutFrom}` : '')).join(', ')}`,
      kind: 'fold',
      cell,
      path,
      reads: [fuelShare, ...rows.flatMap(({ row }) => Array.from({ length: PART_STRIDE }, (_, k) => row + k))],
      writes: [...folds, ...moments, ...shares],
      reasons: ['weightless', 'share'],
      bind(column, stride) {
        const from = rows.map(({ row }) => column(row));
        const [foldTo, momentTo, shareTo] = [folds, moments, shares].map((slots) => Int32Array.from(slots, column)) as [
          Int32Array,
          Int32Array,
          Int32Array,
        ];
        const onBoard = column(fuelShare);
        const groups = groupsOf(rows);
        const sums = new Float64Array(6 * rows.length);
        const gathered = new Float64Array(rows.length * PART_STRIDE);
        const folded = new Float64Array(FOLD_NAMES.length);
        const moment = new Float64Array(rows.length);
        const part = new Float64Array(rows.length);
        return (m, why, n) => {
          for (let i = 0; i < n; i++) {
            if (why[i] !== 0) continue;
            const f = m[onBoard + i]!;
            if (!(f >= 0 && f <= 1)) {
              why[i] = 2;
              continue;
            }
            for (let r = 0; r < from.length; r++) {
              const [o, at] = [r * PART_STRIDE, from[r]! + i];
              for (let k = 0; k < PART_STRIDE; k++) gathered[o + k] = m[at + k * stride]!;
            }
            if (foldParts(gathered, fuel, f, folded, groups, sums)) {
              why[i] = 1;
              continue;
            }
            momentsAboutCg(gathered, fuel, f, folded[AT_X]!, moment, part);
            for (let k = 0; k < foldTo.length; k++) m[foldTo[k]! + i] = folded[k]!;
            for (let r = 0; r < from.length; r++) {
              m[momentTo[r]! + i] = moment[r]!;
              m[shareTo[r]! + i] = part[r]!;
            }
          }
        };
      },
    },
    tell: (reason, read) =>
      reason === 0
        ? { path, message: partsReasons.weightless }
        : { path: share.path, message: tellBreach(share, read(share.slot)) },
  };
}

/** Per row the first one that is cut from the same, or itself. */
const groupsOf = (rows: FoldPartsSpec['rows']): Int32Array =>
  Int32Array.from(rows, ({ cutFrom }, i) =>
    cutFrom === undefined ? i : rows.findIndex((each) => each.cutFrom === cutFrom),
  );
