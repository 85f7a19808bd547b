export type { Design, Version } from './database';
export { databaseOpener } from './database';
export { createDesignStore, DAYS_TO_BRING_BACK } from './design-store';
export { createHolding } from './holding';
export { createKeeper, type FileState, type Keeper, type Opens, type SheetKeep } from './keeper';
export { keepPicture, keptPicture } from './pictures';
export { type TakenIn, titleKey } from './taking-in';
export { THINNING, TOLD } from './versions';
