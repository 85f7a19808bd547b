import { cutFrom } from './cells/cut-from';
import { type PartField, partFields } from './cells/part-fields';
import type { Document, Part } from './document';
import { cellsOf } from './sheets';

/** A weighed part of which a trade changes a size. */
export interface TradedSize {
  readonly title: string;
  /** The size in the middle of a sentence. */
  readonly words: string;
}

/** The weighed parts whose thickness, layers or finish is one of these paths, or is typed with one of these names. */
export function tradedSizes(document: Document, traded: readonly string[]): readonly TradedSize[] {
  return cellsOf(document).flatMap((cell) => {
    if (cell.kind !== 'parts') return [];
    return cell.rows.flatMap((part) => {
      const sizes = keptFields(part)
        .flatMap(({ asWeighed }) => asWeighed ?? [])
        .filter((of) =>
          of === 'areal_mass'
            ? layersOf(document, part).some((text) => says(text, traded))
            : traded.includes(`${cell.name}.${part.name}.${of}`) || says(part.fields[of] ?? '', traded),
        );
      return sizes.map((of): TradedSize => ({ title: part.title || part.name, words: WORDS[of] ?? 'thickness' }));
    });
  });
}

const WORDS: Readonly<Record<string, string>> = { areal_mass: 'stack', coat: 'finish' };

/** Names of the texts in which it was kept what a part was when it was weighed. */
export const keptWhenWeighed = (part: Part): readonly string[] => keptFields(part).map(({ name }) => name);

const keptFields = ({ shape, fields }: Part): readonly PartField[] =>
  partFields(shape).filter(({ name, asWeighed }) => asWeighed !== undefined && (fields[name] ?? '').trim() !== '');

/** Texts of the stack from which a part is cut. */
const layersOf = (document: Document, part: Part): readonly string[] =>
  cellsOf(document).flatMap((cell) =>
    cell.kind === 'choice' && cell.name === cutFrom(part)
      ? cell.options.flatMap((option) => JSON.stringify(option))
      : [],
  );

/** Whether a text speaks of any of these names. */
const says = (text: string, names: readonly string[]): boolean =>
  (text.match(/[a-z_][\w.]*/gi) ?? []).some((word) => names.includes(word));
