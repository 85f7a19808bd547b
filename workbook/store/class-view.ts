import { signal } from '@preact/signals';

/** Guesses are taken of a class on this one machine, each under a name, and the instructor's notes are shown. */
export const classView = signal(false);
