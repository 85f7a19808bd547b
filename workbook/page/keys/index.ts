export { keepFocus } from './focus-home';
export { GoToDialog } from './go-to-dialog';
export { KeysDialog } from './keys-dialog';
export { watchKeys } from './watch';
