import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import {
  applyChanges,
  copyingSheet,
  type Document,
  type FirstDesignForm,
  type FirstDesignService,
  FORMAT,
  type FormProblem,
  type HangarService,
  openText,
  type PieceOffer,
  serialiseDesigns,
  tooLargeForAny,
  VERSION,
} from '../../engine/index';
import { fileName, saveText } from './files';
import { createHangar, type Hangar } from './hangar';
import { DAYS_TO_BRING_BACK, type Design, type Keeper, type Version } from './keep/index';
import { momentWords } from './moment-words';
import { refusal, type Sheet } from './sheet';
import { today } from './today';
import { variantInto } from './variants';

/** The designs of this machine, their versions, and all that can be done with them. */
export interface Designs {
  /** Nothing was ever kept here: the ways to begin are told. */
  readonly welcome: Signal<boolean>;
  /** The form of a first design is shown. */
  readonly beginning: Signal<boolean>;
  /** Makes a first design and opens it; what is wrong with the form otherwise. */
  firstDesign(form: FirstDesignForm): Promise<readonly FormProblem[]>;
  /** Opens a sheet with nothing in it. */
  emptySheet(): void;
  /** What stands here is neither kept nor in a file: it would be lost with the page. */
  atRisk(): boolean;
  readonly keeping: Keeper['keeping'];
  readonly file: Keeper['file'];
  readonly atRest: Keeper['atRest'];
  readonly open: Keeper['open'];
  /** Undefined until they are read. Last opened first; deleted ones among them. */
  readonly list: ReadonlySignal<readonly Design[] | undefined>;
  /** Of the open design, newest first; undefined until they are read. */
  readonly versions: ReadonlySignal<readonly Version[] | undefined>;
  /** What the engine tells of the designs of the list. */
  readonly hangar: Hangar;
  readList(): Promise<void>;
  readVersions(): Promise<void>;
  openDesign(design: Design): void;
  /** Opens another design with a copy of a sheet of the open one behind its own. */
  copySheetTo(design: Design, sheet: string): void;
  /** The design of which a piece is to be picked for the open one. */
  readonly takingFrom: Signal<Design | undefined>;
  /** Puts a piece of another design into the open one, as one edit, or says why it can't be. */
  take(design: Design, piece: PieceOffer): Promise<void>;
  /** The variant of the open design for which another design is to be picked. */
  readonly copying: Signal<string | undefined>;
  /** Opens another design with a copy of a variant of the open one. */
  copyVariantTo(design: Design, variant: string): void;
  copyDesign(design: Design): void;
  /** Saves these designs as one file; returns why one of them can't be saved. */
  saveTogether(ids: readonly string[]): Promise<string | undefined>;
  deleteDesign(design: Design): Promise<void>;
  bringBack(design: Design): Promise<void>;
  /** There is no way back from this. */
  removeDesign(design: Design): Promise<void>;
  look(version: Version): void;
  returnTo(version: Version): void;
  copyVersion(version: Version): void;
  nameVersion(version: Version, name: string): Promise<void>;
  /** Returns the way back. */
  deleteVersion(version: Version): Promise<() => Promise<void>>;
  /** Goes on with a copy of what is shown, as a design of its own. */
  copyShown(): void;
  takeOver(): Promise<void>;
}

export const DELETED_WORDS = `Deleted. It can be brought back for ${DAYS_TO_BRING_BACK} days.`;

const CHANGED = 'The design was changed while the piece was being taken. Nothing was taken: take it once more.';

export interface DesignsPorts {
  readonly engine: FirstDesignService & HangarService;
  readonly firstVisit: boolean;
  /** Milliseconds since 1970. */
  now(): number;
}

export function createDesigns(sheet: Sheet, keeper: Keeper, { engine, firstVisit, now }: DesignsPorts): Designs {
  const { store } = keeper;
  const list = signal<readonly Design[] | undefined>(undefined);
  const hangar = createHangar(engine);
  const versions = signal<readonly Version[] | undefined>(undefined);

  /** Does something with a text of the store, or says why it can't be read. */
  function withText(text: string, name: string, use: (document: Document) => void): void {
    const opened = openText(text);
    if (opened.ok) use(opened.document);
    else sheet.tell({ ...refusal(name, opened), text });
  }

  async function reading<T>(read: () => Promise<T>): Promise<T | undefined> {
    try {
      await keeper.stored();
      return await read();
    } catch {
      return undefined;
    }
  }

  async function readList(): Promise<void> {
    const all = (await reading(store.designs)) ?? [];
    const sorted = all.toSorted((a, b) => b.changed - a.changed);
    list.value = sorted;
    void hangar.tell(sorted.filter(({ deleted }) => deleted === undefined));
  }

  async function readVersions(): Promise<void> {
    versions.value = (await reading(() => store.versions(keeper.open.value))) ?? [];
  }

  /** A change of the store, and the lists as they are after it. What could not be written before may have room now. */
  async function altering(change: () => Promise<void>): Promise<void> {
    await reading(change);
    keeper.retry();
    await Promise.all([list.value && readList(), versions.value && readVersions()]);
  }

  function copy(document: Document): void {
    const title = `${document.title || 'Untitled design'}, copy`;
    sheet.replace({ ...document, title }, `opening ${title}`, () => keeper.begin());
  }

  const returning = (version: Version): string => `return to the version of ${momentWords(version.at, now())}`;

  return {
    welcome: signal(firstVisit),
    beginning: signal(false),
    async firstDesign(form) {
      const answer = await engine.firstDesign(form);
      if (!answer.ok) return answer.problems;
      const { title } = answer.document;
      sheet.replace({ ...answer.document, date: today(now()) }, `opening ${title}`, () => keeper.begin());
      return [];
    },
    emptySheet() {
      const empty: Document = {
        format: FORMAT,
        version: VERSION,
        title: '',
        drawn: '',
        date: today(now()),
        units: sheet.document.value.units,
        sheets: [{ id: 's1', title: 'Decide', pieces: [] }],
        rows: [],
        figures: [],
      };
      sheet.replace(empty, 'opening an empty design', () => keeper.begin());
    },
    atRisk() {
      const keeping = keeper.keeping.value;
      if (keeping.kind === 'elsewhere') return keeping.unkept;
      return keeping.kind === 'refused' && (keeper.file.value === 'none' || keeper.file.value === 'older');
    },
    keeping: keeper.keeping,
    file: keeper.file,
    atRest: keeper.atRest,
    open: keeper.open,
    list,
    versions,
    hangar,
    readList,
    readVersions,
    openDesign(design) {
      if (design.id === keeper.open.value) return;
      withText(design.text, design.title, (document) =>
        sheet.replace(document, `opening ${design.title}`, () => keeper.begin(design)),
      );
    },
    copySheetTo(design, id) {
      if (design.id === keeper.open.value) {
        sheet.copySheet(id);
        return;
      }
      withText(design.text, design.title, (to) => {
        const from = sheet.document.value;
        const changes = copyingSheet(to, from, id, sheet.offered.peek()?.blocks ?? []);
        const next = applyChanges(to, changes).document;
        sheet.replace(next, `opening ${design.title} with a copy of a sheet`, () => keeper.begin(design));
        sheet.showSheet(next.sheets.at(-1)!.id);
      });
    },
    takingFrom: signal(undefined),
    async take(design, piece) {
      sheet.settle();
      const to = sheet.document.value;
      const answer = await engine.take(to, design.text, piece);
      if (!answer.ok) return sheet.tell({ title: answer.message, sentences: [] });
      if (sheet.document.value !== to) return sheet.tell({ title: CHANGED, sentences: [] });
      sheet.edit(() => [{ change: 'design', document: answer.document }], `“${piece.title}” of ${design.title}`);
      if (sheet.document.value === to) return;
      sheet.showSheet(answer.sheet);
      sheet.tell({ title: answer.done, sentences: [], after: sheet.document.value });
    },
    copying: signal(undefined),
    copyVariantTo(design, name) {
      const variant = sheet.document.value.variants?.find((each) => each.name === name);
      if (!variant || design.id === keeper.open.value) return;
      withText(design.text, design.title, (to) => {
        const { changes, sheet: shows } = variantInto(to, variant);
        const next = applyChanges(to, changes).document;
        sheet.replace(next, `opening ${design.title} with a copy of a variant`, () => keeper.begin(design));
        if (shows !== undefined) sheet.showSheet(shows);
      });
    },
    async saveTogether(ids) {
      sheet.settle();
      await readList();
      const chosen = (list.value ?? []).filter(({ id, deleted }) => deleted === undefined && ids.includes(id));
      const documents: Document[] = [];
      for (const { text, title } of chosen) {
        const opened = openText(text);
        if (!opened.ok) return `${title}: ${opened.message} Leave it out of the file.`;
        documents.push(opened.document);
      }
      const text = serialiseDesigns(documents);
      const refused = tooLargeForAny(text.length);
      if (refused) return 'These designs together would be too large for one file. Choose fewer of them.';
      saveText(text, fileName(`${documents.length} designs`));
      for (const { id, text } of chosen) {
        if (id === keeper.open.value) keeper.filed(text);
        else await reading(() => store.markFiled(id, text));
      }
      return undefined;
    },
    copyDesign: (design) => withText(design.text, design.title, copy),
    deleteDesign: (design) => altering(() => store.markDeleted(design.id, now())),
    bringBack: (design) => altering(() => store.markDeleted(design.id, undefined)),
    removeDesign: (design) => altering(() => store.remove(design.id)),
    look: (version) =>
      withText(version.text, 'This version', (document) =>
        sheet.look({ at: `the version of ${momentWords(version.at, now())}`, document, version }),
      ),
    returnTo: (version) =>
      withText(version.text, 'This version', (document) => {
        sheet.replace(document, returning(version), () => {
          keeper.apart();
          return undefined;
        });
      }),
    copyVersion: (version) => withText(version.text, 'This version', copy),
    nameVersion: (version, name) => altering(() => store.nameVersion(version.id, name.trim() || undefined)),
    async deleteVersion(version) {
      await altering(() => store.deleteVersion(version.id));
      return () => altering(() => store.restoreVersion(version));
    },
    copyShown: () => copy(sheet.document.value),
    takeOver: keeper.takeOver,
  };
}

export const DesignsContext = createContext<Designs | undefined>(undefined);

/** The designs of this machine; undefined where a sheet is shown that is not kept. */
export const useDesigns = (): Designs | undefined => useContext(DesignsContext);
