export { inOtherUnit, moved } from './edits';
export { FormRow, NameRow, UnitRow, WordsRow } from './form';
export { RowRoom } from './room';
export { RowMenu } from './row-menu';
export { useSteadyKeys } from './steady-keys';
