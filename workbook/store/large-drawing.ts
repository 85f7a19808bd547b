import { signal } from '@preact/signals';

/** Id of the drawing that is shown large. */
export const largeAsked = signal<string | undefined>(undefined);
