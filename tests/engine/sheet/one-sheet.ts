import type { Cell, Sheet } from '../../../engine/sheet/document';

/** The sheets of a design that has one, with these cells on it. */
export const onOneSheet = (pieces: readonly Cell[]): readonly Sheet[] => [{ id: 's1', title: 'Decide', pieces }];
