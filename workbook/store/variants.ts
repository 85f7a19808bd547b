import {
  addingVariants,
  type BlockLinks,
  type Change,
  capital,
  cellsOf,
  chartingVariant,
  type Document,
  editingVariant,
  freeId,
  freeName,
  freeVariantName,
  inSentence,
  keepingVariant,
  readVariants,
  removingVariant,
  renamingVariant,
  takenNames,
  textAt,
  type Variant,
  type VariantsCell,
  type VariantTexts,
  variantAsBaseline,
  variantNameFault,
  writeQuantity,
  writeVariants,
} from '../../engine/index';
import type { Editor } from './editor';
import { textToKeep } from './entries';
import type { Reader } from './reader';
import { showValue } from './show';
import type { Place, Taker } from './taker';

/** What can be done with variants. Each is one edit; none but `keepVariant` changes what is set. */
export interface VariantCommands {
  /**
   * Makes a variant under this name or the next that is free, and says so. Where the design has no table of variants yet, one
   * comes with it, at the end of the shown sheet.
   */
  makeVariant(name: string, texts: VariantTexts): void;
  readonly taker: Taker;
  /** A bare number takes the unit that the entry of the design shows. Undefined: as the design has it. */
  editVariant(name: string, path: string, text: string | undefined): void;
  /** Gives what is wrong with the name where it can't have it. */
  renameVariant(name: string, to: string): string | undefined;
  /** Sets the design to it. */
  keepVariant(name: string): void;
  baselineFromVariant(name: string): void;
  chartVariant(name: string, shown: boolean): void;
  removeVariant(name: string): void;
  /** Puts it on the clipboard, to be added to another design; where there is none, offers it as a file. */
  copyVariant(name: string): Promise<void>;
  /** Adds what was copied from another design; gives what was done, or why not. */
  addCopied(text: string): { readonly ok: boolean; readonly message: string };
}

export interface VariantPorts {
  readonly editor: Editor;
  readonly blocks: () => readonly BlockLinks[];
  readonly reader: Pick<Reader, 'name' | 'value' | 'optionTitle'>;
  /** Id of the sheet that is shown. */
  readonly shown: () => string;
  /** Says what was done, with a way back. `after`: the document as it is then. */
  told(title: string, after: Document): void;
  /** Says what couldn't be done and gives the text, not to be lost. */
  lost(title: string, text: string): void;
  /** Missing: this place has no clipboard. */
  readonly copy?: ((text: string) => Promise<void>) | undefined;
}

export function createVariants({ editor, blocks, reader, shown, told, lost, copy }: VariantPorts): VariantCommands {
  const { document } = editor;
  /** Whether the edit could be made. */
  const change = (make: (now: Document) => readonly Change[], says: string): boolean => {
    editor.settle();
    const before = document.peek();
    const changes = make(before);
    if (changes.length > 0) editor.change(changes, says);
    return document.peek() !== before;
  };
  /** What is at its place already stays as it is typed. */
  const textsFor = (design: readonly Place[]): VariantTexts =>
    Object.fromEntries(
      design.flatMap(({ path, si }) => {
        const info = reader.name(path);
        const typed = textAt(document.peek(), path);
        if (!info || typed === undefined) return [];
        if (isHere(reader.value(path), si)) return [[path, typed]];
        return [[path, info.options?.[si] ?? writeQuantity(si, info.unit)]];
      }),
    );
  const designTitle = (design: readonly Place[]): string => {
    const moved = design.filter(({ path, si }) => !isHere(reader.value(path), si));
    return (moved.length > 0 ? moved : design).map((place) => placeWords(place, reader)).join(', ');
  };
  const makeVariant: VariantCommands['makeVariant'] = (wanted, texts) => {
    editor.settle();
    const now = document.peek();
    const name = freeVariantName(now, wanted);
    const table = cellsOf(now).some(({ kind }) => kind === 'variants') ? [] : puttingTable(now, shown());
    const made = change(() => [...addingVariants(now, [{ name, changes: texts }]), ...table], `the variant “${name}”`);
    const where = table.length > 0 ? ', in a table at the end of this sheet' : '';
    if (made) told(`Made: the variant “${name}”${where}. The design is as it was.`, document.peek());
  };
  return {
    makeVariant,
    taker: {
      title: designTitle,
      variant: (design) => makeVariant(capital(designTitle(design)), textsFor(design)),
      set(design) {
        const title = designTitle(design);
        const texts = Object.entries(textsFor(design));
        const made = change(
          (now) =>
            texts.flatMap(([path, text]) => (textAt(now, path) === text ? [] : [{ change: 'text', path, text }])),
          title,
        );
        if (made) told(`The design is set to ${title} now.`, document.peek());
      },
    },
    editVariant(name, path, text) {
      const before = document.peek().variants?.find((each) => each.name === name)?.changes[path];
      const standing = before ?? textAt(document.peek(), path) ?? '';
      const kept = text === undefined ? undefined : textToKeep(reader.name(path), standing, text);
      change((now) => editingVariant(now, name, path, kept), `the variant “${name}”`);
    },
    renameVariant(name, to) {
      const fault = variantNameFault(document.peek(), name, to);
      if (fault === undefined) change((now) => renamingVariant(now, name, to), `the name of the variant “${name}”`);
      return fault;
    },
    keepVariant(name) {
      const made = change((now) => keepingVariant(now, name, blocks()), `keeping the variant “${name}”`);
      if (made) told(`The design is set to ${name} now.`, document.peek());
    },
    baselineFromVariant(name) {
      const made = change((now) => variantAsBaseline(now, name, blocks()), `the baseline, from the variant “${name}”`);
      if (made) told(`${name} is the baseline now. The design is as it was.`, document.peek());
    },
    chartVariant(name, on) {
      change((now) => chartingVariant(now, name, on), `the ghost of the variant “${name}”`);
    },
    removeVariant(name) {
      const made = change((now) => removingVariant(now, name), `removing the variant “${name}”`);
      if (made) told(`Removed: the variant “${name}”.`, document.peek());
    },
    async copyVariant(name) {
      const variant = document.peek().variants?.find((each) => each.name === name);
      if (!variant) return;
      const text = writeVariants([variant]);
      try {
        if (!copy) throw new Error('no clipboard');
        await copy(text);
        told(`Copied: the variant “${name}”. Paste it under “Add copied variants” of another design.`, document.peek());
      } catch {
        lost(`The variant ${name} could not be put on the clipboard.`, text);
      }
    },
    addCopied(text) {
      const read = readVariants(text);
      if (!read.ok) return read;
      const count = read.variants.length;
      const made = change((now) => addingVariants(now, read.variants), count === 1 ? 'a variant' : `${count} variants`);
      if (!made) return { ok: false, message: 'Nothing was added: the design may not be changed now.' };
      return { ok: true, message: count === 1 ? 'One variant was added.' : `${count} variants were added.` };
    },
  };
}

/** Two numbers this close are one that was computed in two ways. */
const NEAR = 1e-9;
const isHere = (now: number, si: number): boolean => Math.abs(now - si) <= NEAR * Math.max(Math.abs(now), Math.abs(si));

/** "engine station −160 mm"; an option by its title alone. */
function placeWords({ path, si }: Place, { name, optionTitle }: VariantPorts['reader']): string {
  const info = name(path);
  if (!info) return path;
  const option = info.options?.[si];
  const value = option === undefined ? showValue(info, si) : (optionTitle(path, option) ?? option.replaceAll('_', ' '));
  return `${inSentence(info.title)} ${value}`;
}

/** Key figures that a new table shows. */
const FIRST_RESULTS = 5;

/** A table of variants as it begins: the first key figures of the design. */
export const newVariants = (document: Document): VariantsCell => ({
  ...{ kind: 'variants', id: freeId(document), name: freeName('variants', takenNames(document)), title: 'Variants' },
  wanted: document.figures.slice(0, FIRST_RESULTS),
});

/** A variant of another design, with a table of variants where there is none yet; `sheet`: id of the one that shows it. */
export function variantInto(document: Document, { changes, ...variant }: Variant) {
  const name = freeVariantName(document, variant.name);
  const there = document.sheets.find(({ pieces }) => pieces.some(({ kind }) => kind === 'variants'));
  const sheet = there ?? document.sheets[0];
  const table = there || !sheet ? [] : puttingTable(document, sheet.id);
  return { changes: [...addingVariants(document, [{ name, changes }]), ...table], sheet: sheet?.id };
}

function puttingTable(document: Document, sheet: string): readonly Change[] {
  const at = document.sheets.find(({ id }) => id === sheet)?.pieces.length ?? 0;
  return [{ change: 'insert', sheet, at, cell: newVariants(document) }];
}
