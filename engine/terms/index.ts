/** What every layer above says to each other: names, faults, descriptions, progress. Types and constants only. */
export type {
  BlockDescription,
  ColumnDescription,
  Description,
  FieldDescription,
  OutlineDescription,
  ResultDescription,
  RoleCaution,
  RowDescription,
  TableDescription,
  TraceDescription,
} from './description';
export type { Fault } from './faults';
export type { NameInfo } from './names';
export type {
  LeverChange,
  LeversTold,
  SpreadFactor,
  SpreadOfResult,
  SpreadTold,
  SweepAxisValues,
  SweepProgress,
} from './progress';
export { NOT_COMPUTED } from './progress';
export type { TraceAnswer, TraceColumn } from './trace';
export type { VariantChange, VariantColumn, VariantShares, VariantsTold } from './variants';
