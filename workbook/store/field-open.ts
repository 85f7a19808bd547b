import { signal } from '@preact/signals';

/** The address of the view for the field: a page that is loaded again there opens with it, without a connection too. */
const ADDRESS = '#field';

/** Whether the view for the field stands in the place of the sheet. */
export const atField = signal(false);

export function openField(): void {
  location.hash = ADDRESS;
}

export function closeField(): void {
  history.replaceState(null, '', location.pathname + location.search);
  atField.value = false;
}

/** Follows the address, from now on. */
export function watchField(): void {
  const follow = (): void => {
    atField.value = location.hash === ADDRESS;
  };
  window.addEventListener('hashchange', follow);
  follow();
}
