import type { Document, Variable } from '../../sheet/document';
import { openLive } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { textOf } from '../make/index';

/** The texts of a design as another one can take them. */
export interface Settled {
  /** Title of the design. */
  readonly of: string;
  /** A text that says something by itself stays; one that names something of the design becomes what it is there, '' where it is nothing. */
  text(path: string, text: string): string;
  /** What the design has at a path, as a text; '' where it has no answer. */
  value(path: string): string;
}

export function settledTexts(document: Document, library: Library): Settled {
  const { compiled, state } = openLive(document, library);
  const infos = new Map(compiled.names.map((info) => [info.path, info]));
  const value = (path: string): string => {
    const info = infos.get(path);
    const number = info ? state.m[info.slot]! : Number.NaN;
    if (!info || !Number.isFinite(number)) return '';
    return info.options ? (info.options[number] ?? '') : textOf(number, info.unit);
  };
  return {
    of: document.title || 'Untitled design',
    value,
    text(path, text) {
      const set = variableOf(document, text);
      // As it was typed where it says its unit itself.
      if (set && /[a-z'"]/i.test(set.text) && compiled.read(set.name, set.text)?.is === 'constant') return set.text;
      const reading = compiled.read(path, text);
      return !reading || reading.is === 'constant' ? text : value(path);
    },
  };
}

/** The variable that a text names and does nothing else with. */
export const variableOf = (document: Document, text: string | undefined): Variable | undefined =>
  cellsOf(document)
    .flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []))
    .find(({ name }) => name === text?.trim());
