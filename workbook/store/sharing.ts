import { type Signal, signal } from '@preact/signals';

/** A design is to be handed on, or one that was handed on is to be read. */
export const askingToShare: Signal<'to' | 'from' | undefined> = signal(undefined);
