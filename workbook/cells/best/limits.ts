import type { Sheet } from '../../store/sheet';

/** Checks that have a limit, and results that the design stops for. */
export const limitsOf = (sheet: Sheet): readonly { readonly path: string; readonly title: string }[] => [
  ...sheet.checks.value
    .filter(({ low, high }) => low.trim() !== '' || high.trim() !== '')
    .map(({ name, title }) => ({ path: name, title })),
  ...[...sheet.names.value.values()].filter(({ least }) => least?.stops).map(({ path, title }) => ({ path, title })),
];
