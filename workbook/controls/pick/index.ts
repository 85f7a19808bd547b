export { Combobox } from './combobox';
export type { PickOption } from './search';
