export { inOtherUnit, moved } from './edits';
export { FormRow, NameRow, UnitRow, UnitSelect, WordsRow } from './form';
export { RowRoom } from './room';
export { RowMenu } from './row-menu';
