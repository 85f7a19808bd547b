export { Combobox } from './combobox';
export { findOptions, type PickOption } from './search';
