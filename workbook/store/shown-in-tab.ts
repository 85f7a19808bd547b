import { inTab } from './in-tab';

const KEY = 'tetherwright.shown-sheet';

/** Id of the sheet that this tab showed last, so that loading the page again shows it. */
export const lastShown = (): string | undefined => inTab((memory) => memory.getItem(KEY) ?? undefined);

export const rememberShown = (id: string): void => void inTab((memory) => memory.setItem(KEY, id));
