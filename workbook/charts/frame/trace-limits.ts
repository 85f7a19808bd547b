import { sameDimension, type TraceColumn } from '../../../engine/index';
import { checkZones, type Zone } from './limits';
import { measure } from './measure';
import type { TraceChartProps } from './props';

/** Limits of the checks that the cell names, where they are of the quantity that the column tells. */
export function limitsOfColumn(column: TraceColumn, props: TraceChartProps): Zone[] {
  if (!props.cell.checks) return [];
  return props.checks.flatMap((check) => {
    const info = props.names.get(check.of.trim());
    if (!info || !sameDimension(info.dimension, column.dimension)) return [];
    const of = { ...info, unit: column.unit, suffix: column.suffix, ways: column.ways };
    return checkZones(measure(of), [check], props.names, props.values);
  });
}
