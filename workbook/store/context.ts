import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Sheet } from './sheet';

export const SheetContext = createContext<Sheet | undefined>(undefined);

/** The open sheet. Reading its signals while rendering makes the component follow them. */
export function useSheet(): Sheet {
  const sheet = useContext(SheetContext);
  if (!sheet) throw new Error('A part of the sheet was drawn outside of it.');
  return sheet;
}
