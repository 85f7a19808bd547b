import { signal } from '@preact/signals';
import { createContext } from 'preact';
import type { ListeningService } from '../../engine/index';

export const ListeningContext = createContext<ListeningService | undefined>(undefined);

/** Somebody wants to listen to a flight; `log`: what is heard goes into the log of this name. */
export const askingToListen = signal<{ readonly log?: string } | undefined>(undefined);
