import { batch, computed, effect, type ReadonlySignal, type Signal, signal, untracked } from '@preact/signals';
import {
  type BlockDescription,
  baselineOf,
  type Cell,
  type Change,
  type CheckCell,
  type DayAnswer,
  type DayForm,
  type Description,
  type Document,
  type EngineService,
  type Expression,
  type Fault,
  type ForgottenThing,
  type Head,
  type NameInfo,
  type Opened,
  openDesigns,
  openText,
  type PlacedTemplate,
  type Reconciliation,
  type Repair,
  readText,
  type Snapshot,
  serialise,
  type TableDescription,
  type TrimAnswer,
  textAt,
  tooLargeForAny,
  type UnitSet,
  type VariantGhost,
  weighingPart,
} from '../../engine/index';
import { type Bests, createBests } from './best';
import { steadyList } from './by-path';
import { type CellCommands, createCellCommands } from './cell-commands';
import type { ShippedDesign } from './demo';
import { createEditor } from './editor';
import { linkEngine } from './engine-link';
import { textToKeep } from './entries';
import { fileName, saveText } from './files';
import { createFits, type Fits } from './fits';
import { createFlown, type Flown } from './flown';
import type { Opens, SheetKeep, Version } from './keep/index';
import { followMadeOf } from './made-of';
import { createMakings, type Makings } from './makings';
import { createMends, type Mends } from './mends';
import { createOverview, type Overview } from './overview';
import { createReader, type Reader } from './reader';
import { createRoles, type Roles } from './roles';
import { createSheetSet, type SheetSet } from './sheet-set';
import { type SheetState, sheetState, sideOf } from './sheet-state';
import { shownOf } from './shown';
import { standsOn } from './stands-on';
import { createStudies, type Studies } from './studies';
import { createSweeps, type Sweeps } from './sweeps';
import { takenWords } from './taken-words';
import { createTraces, type Traces } from './traces';
import { createVariantGhosts } from './variant-ghosts';
import { createVariants, type VariantCommands } from './variants';
import { createWeighings, type Weighings } from './weighings';

/** Something to be told that belongs to no cell. */
export interface Notice {
  readonly title: string;
  readonly sentences: readonly string[];
  /** A text that should not be lost: it can be saved to a file as it is. */
  readonly text?: string;
  /** The document as an edit left it: said, with a way back, as long as nothing else is done. */
  readonly after?: Document;
  /** Nothing is wrong: it says what was done. */
  readonly good?: true;
  /** With `after`: brings back what was typed and not kept, in the place of taking the last edit back. */
  readonly restore?: () => void;
}

/** Something else than the open design is shown, to be looked at only. */
interface Looking {
  /** What is looked at, in the middle of a sentence. */
  readonly at: string;
  readonly document: Document;
  readonly version: Version;
}

/** A part whose place is being picked on the drawing. */
interface Picking {
  readonly path: string;
  readonly title: string;
}

/** The open sheet: its document, the engine's answers, and everything that can be done with it. */
/** A design to read numbers of; `behind`: it's the one before the hand began to move it. */
interface Beside {
  readonly reader: Reader;
  readonly behind: boolean;
}

export interface Sheet extends Reader, Overview, Roles, SheetSet, Studies, Makings, CellCommands, VariantCommands {
  readonly document: ReadonlySignal<Document>;
  readonly snapshot: ReadonlySignal<Snapshot | undefined>;
  /**
   * Who tells how these numbers stand together: while a hand moves the design and any of them waits, the design as it stood when
   * all of it had last been computed.
   */
  beside(paths: readonly string[]): Beside;
  /** The same for a check with its limits. */
  besideOf(check: Pick<CheckCell, 'name'>): Beside;
  /** Of the whole design. */
  readonly state: ReadonlySignal<SheetState>;
  /** Checks whose value is beyond a limit, in reading order. */
  readonly stops: ReadonlySignal<readonly CheckCell[]>;
  /** Results that are under what they may not come under, where the design stops for it and no check says so. */
  readonly breaches: ReadonlySignal<readonly NameInfo[]>;
  /** Checks without any limit: they stop nothing. */
  readonly unlimited: ReadonlySignal<readonly CheckCell[]>;
  readonly undoSays: ReadonlySignal<string | undefined>;
  readonly redoSays: ReadonlySignal<string | undefined>;
  readonly sweeps: Sweeps;
  /** What runs along something: pull around the lap. */
  readonly traces: Traces;
  /** Factors found from logs. */
  readonly fits: Fits;
  readonly flown: Flown;
  /** The change that mends what is seen in the air, and what the model expects of it. */
  trim(observation: string): Promise<TrimAnswer>;
  /** What the day at the field is for the design as it stands. */
  dayCard(form: DayForm): Promise<DayAnswer>;
  /** What brings results where they are wanted. */
  readonly mends: Mends;
  /** Designs that no other beats in what is wanted. */
  readonly bests: Bests;
  /** What benches tell. */
  readonly weighings: Weighings;
  /** The variants that charts show. */
  readonly variantGhosts: ReadonlySignal<readonly VariantGhost[]>;
  /** A hand moves the design. */
  readonly moving: ReadonlySignal<boolean>;
  readonly notices: ReadonlySignal<readonly Notice[]>;
  /** The list of what can be opened is shown. */
  readonly choosing: Signal<boolean>;
  /** What is asked for: where to go, or which keys there are. */
  readonly asking: Signal<'where' | 'keys' | undefined>;
  /** All that the engine offers: blocks and tables of the library. */
  readonly offered: ReadonlySignal<Description | undefined>;
  /** The next press on the scale drawing is the place of this part. */
  readonly picking: Signal<Picking | undefined>;
  /** The units in which the design is shown. */
  units(): UnitSet;
  /** Keeps what was typed at a path; a bare number takes the unit that its entry shows. */
  setText(path: string, text: string): void;
  /** Makes the edit that a fault offers. */
  mend(fault: Fault): void;
  /** Several texts in one edit; `says` is what Undo calls it. */
  setTexts(texts: readonly (readonly [path: string, text: string])[], says: string): void;
  /** One edit made of what the document holds at this moment. */
  edit(changes: (document: Document) => readonly Change[], says: string): void;
  /** Whether a text can stand at a path that the engine reads: a number, a formula, a name. */
  takesText(path: string): boolean;
  /** What the engine says of a text that might be typed at a path. */
  check(path: string, text: string): Promise<Checked>;
  /** A text is being typed somewhere; see the editor of the document. */
  typing(settle: () => void): () => void;
  /** Makes edits of all that is under way. */
  settle(): void;
  drag(path: string, text: string): void;
  /** The same of several texts that move together; `says` is what Undo calls it. */
  dragTexts(texts: ReadonlyMap<string, string>, says: string): void;
  rest(byKeys?: boolean): void;
  undo(): void;
  redo(): void;
  changeCell(cell: Cell): void;
  changeHead(head: Head, says: string): void;
  /** Changes how a cell is shown: nothing to take back, nothing to compute. */
  arrange(cell: Cell): void;
  /** The rows of sweeps, as the engine has them. */
  readonly tables: Pick<EngineService, 'table' | 'tableFile'>;
  takeBaseline(): void;
  returnToBaseline(): void;
  /** Whether a text is more than one number or name of its kind: moving a slide would replace a formula. */
  isComputed(text: string, unit: string): boolean;
  blockNamed(kind: string): BlockDescription | undefined;
  /** A table of the library; undefined until the engine has told, and for a name that it does not know. */
  tableNamed(name: string): TableDescription | undefined;
  /** Counts the changes that were tried while none may be made. */
  readonly refusals: ReadonlySignal<number>;
  readonly looking: ReadonlySignal<Looking | undefined>;
  /** Shows something else for a while; undefined goes back to the design. */
  look(at: Looking | undefined): void;
  /**
   * Puts another document in the place of the open one, as one edit. `begin`: it is another design of this machine, which is
   * begun when all that belongs to the one before is done.
   */
  replace(document: Document, says: string, begin?: () => Opens | undefined): void;
  /** Shows the design as another page has left it. */
  follow(document: Document): void;
  /** Mass of the parts made of a choice with each of its options in order, kg; none where no part is, or not known yet. */
  madeOf(choice: string): readonly number[];
  /** What a parts cell lacks of the things that are often forgotten. */
  forgotten(parts: string): Promise<readonly ForgottenThing[]>;
  /** What the pieces give to lay on the work at full size. */
  templates(): Promise<readonly PlacedTemplate[]>;
  /** How the CG that a piece has found stands to the table. */
  reconcile(found: string): Promise<Reconciliation>;
  openFile(file: File): Promise<void>;
  /** Opens the text of a design that came from another machine, and no file. */
  openHandedOn(text: string): Promise<void>;
  /** Opens a design that comes with the program, as it came. */
  openDemo(design: ShippedDesign): Promise<void>;
  save(): void;
  dismiss(notice: Notice): void;
  tell(notice: Notice): void;
}

/** A value in SI, or what is wrong with the text. */
type Checked = Awaited<ReturnType<EngineService['check']>>;

export interface SheetPorts {
  readonly engine: EngineService;
  readonly keep: SheetKeep;
  /** The text of a design that comes with the program. */
  loadDemo(design: ShippedDesign): Promise<string>;
  /** Freezes every document, so that a slip in the program shows. */
  readonly frozen: boolean;
  now(): number;
  /** Puts a text on the clipboard; missing where there is none. */
  readonly copy?: (text: string) => Promise<void>;
}

/** Longest time that a moving finger's next place waits for the charts of the last, ms. */
const LONGEST_SETTLING = 80;
/** A finger that hasn't moved for so long holds still, ms. */
const HOLDS_STILL = 400;

export function createSheet(first: Document, ports: SheetPorts): Sheet {
  const { engine } = ports;
  const snapshot = signal<Snapshot | undefined>(undefined);
  const rested = signal<Snapshot | undefined>(undefined);
  const names = signal<ReadonlyMap<string, NameInfo>>(new Map());
  const notices = signal<readonly Notice[]>([]);
  const busy = signal(false);
  const refusals = signal(0);
  const looking = signal<Looking | undefined>(undefined);
  const description = signal<Description | undefined>(undefined);
  const onSheet = (path: string): boolean => standsOn(set.shownSheet.peek(), path);
  const sweeps = createSweeps(engine, onSheet);
  const traces = createTraces(engine, onSheet);
  const fits = createFits(engine);
  const flown = createFlown(engine);
  const mends = createMends(engine);
  const bests = createBests(engine);
  const weighings = createWeighings(engine);

  const tell = (notice: Notice): void => {
    const standing = notices.value.filter(({ after }) => after === undefined || after === editor.document.peek());
    if (!standing.some((other) => other.title === notice.title)) notices.value = [...standing, notice];
  };
  const link = linkEngine(engine, {
    shown: () => (editor.dragging.peek() ? shownOf(editor.document.peek(), set.shownSheet.peek()) : undefined),
    take(answer) {
      batch(() => {
        snapshot.value = answer;
        if (!answer.behind) rested.value = answer;
        if (answer.names) names.value = new Map(answer.names.map((info) => [info.path, info]));
      });
    },
    async settle() {
      const latest = snapshot.value;
      if (!latest) return;
      const coarse = editor.dragging.value;
      const swept = Promise.all([
        traces.refresh(latest.revision, !coarse),
        sweeps.refresh(latest.revision, coarse, latest.baseline !== undefined),
      ]);
      // A fit takes longer than anybody waits for the next place of a finger.
      if (!coarse) void fits.refresh(latest.revision);
      if (!coarse) void flown.refresh(latest.revision);
      if (!coarse) void mends.refresh(latest.revision);
      if (!coarse) void bests.refresh(latest.revision);
      if (!coarse) void weighings.refresh(latest.revision);
      if (!coarse) void ghosts.refresh(latest.revision);
      if (coarse) await Promise.race([swept, new Promise((resolve) => setTimeout(resolve, LONGEST_SETTLING))]);
      if (latest.behind) restSoon(latest);
    },
    onBusy: (now) => {
      busy.value = now;
    },
    onFault: (message) => tell({ title: 'The engine stopped at this edit.', sentences: [message] }),
  });
  const editor = createEditor(first, {
    changed: (document, texts) => (texts ? link.set(document, texts) : link.open(document)),
    committed: (document, says) => ports.keep.write(serialise(document), says),
    turned: (design) => ports.keep.turn?.(design),
    mayChange: () => ports.keep.mayChange?.() ?? true,
    refused() {
      refusals.value++;
    },
    now: ports.now,
    frozen: ports.frozen,
  });
  const catchUp = (): void => link.rest(editor.document.peek());
  /** A finger that holds still asks for what waits, too. */
  function restSoon(answer: Snapshot): void {
    setTimeout(() => {
      if (snapshot.peek() === answer && !link.busy()) catchUp();
    }, HOLDS_STILL);
  }
  // While the finger was down only the coarse lattice ran, and what is slow and not shown waited.
  let wasDragging = false;
  effect(() => {
    const dragging = editor.dragging.value;
    if (wasDragging && !dragging) {
      untracked(() => {
        const { revision = 0, baseline, behind } = snapshot.value ?? {};
        if (behind || link.busy()) {
          catchUp();
          return;
        }
        void sweeps.refresh(revision, false, baseline !== undefined);
        void fits.refresh(revision);
        void flown.refresh(revision);
        void mends.refresh(revision);
        void bests.refresh(revision);
        void weighings.refresh(revision);
        void ghosts.refresh(revision);
      });
    }
    wasDragging = dragging;
  });
  const ghosts = createVariantGhosts(engine, editor.document);
  const reader = createReader(editor.document, snapshot, names);
  const before = createReader(editor.document, rested, names);
  const beside: Sheet['beside'] = (paths) => {
    const behind = paths.some(reader.behind);
    return { reader: behind ? before : reader, behind };
  };
  const besideOf: Sheet['besideOf'] = ({ name }) => beside([name, `${name}.low`, `${name}.high`]);
  const title = (path: string): string => reader.name(path)?.title ?? path;
  const setTexts = (texts: readonly (readonly [string, string])[], says: string): void => {
    editor.settle();
    const changes = texts
      .filter(([path, text]) => (textAt(editor.document.value, path) ?? text) !== text)
      .map(([path, text]): Change => ({ change: 'text', path, text }));
    if (changes.length > 0) editor.change(changes, says);
  };
  const replace: Sheet['replace'] = (document, says, begin) => {
    editor.settle();
    looking.value = undefined;
    editor.look(undefined);
    const opens = begin?.();
    editor.change([{ change: 'design', document }], says, opens);
    set.showSheet(document.sheets[0]!.id);
  };
  const openFrom = async (opened: Opened, name: string, filed: boolean): Promise<void> => {
    notices.value = [];
    if (!opened.ok) {
      tell(refusal(name, opened));
      return;
    }
    const text = serialise(opened.document);
    const same = await ports.keep.find?.(text);
    replace(opened.document, `opening ${name}`, () => {
      const opens = ports.keep.begin?.(same);
      if (filed) ports.keep.filed?.(text);
      return opens;
    });
  };
  const openFile = async (file: File): Promise<void> => {
    const opened = tooLargeForAny(file.size) ?? openDesigns(await file.text());
    if (!('designs' in opened)) return await openFrom(opened, file.name, true);
    editor.settle();
    const taken = await ports.keep.takeIn?.(opened.designs);
    notices.value = [];
    tell(takenWords(file.name, opened.designs.length, taken ?? []));
  };
  const working = (): boolean =>
    !snapshot.value || snapshot.value.behind !== undefined || busy.value || sweeps.running.value > 0;
  const removed = (title: string, after: Document): void => tell({ title, sentences: [], after });
  const sided = (...sides: readonly string[]) =>
    steadyList(() =>
      reader.checks.value.filter((check) => sides.includes(sideOf(check, besideOf(check).reader.value) ?? '')),
    );
  const stops = sided('under', 'over');
  const unlimited = sided('unlimited');
  const breaches = steadyList(() => {
    const watched = new Set(stops.value.map(({ of }) => of.trim()));
    const all = [...names.value.values()];
    return all.filter(({ path, least }) => least?.stops && !watched.has(path) && beside([path]).reader.under(path));
  });
  const faults = (): readonly Fault[] => snapshot.value?.faults ?? [];
  const blocks = (): readonly BlockDescription[] => description.peek()?.blocks ?? [];
  const set = createSheetSet({
    editor,
    blocks,
    faults,
    stopped: () => ({ stops: stops.value, breaches: breaches.value, unlimited: unlimited.value }),
    working,
    removed,
  });
  const overview = createOverview(editor.document, snapshot, names);
  const makings = createMakings({
    engine,
    editor,
    place(path) {
      const { id, pieces } = set.shownSheet.peek();
      const holder = overview.cellHolding(path);
      const here = pieces.some((piece) => piece.id === holder);
      return { sheet: id, ...(here && holder !== undefined ? { after: holder } : {}) };
    },
    tell: (title, after) => tell({ title, sentences: [], ...(after ? { after } : {}) }),
  });
  link.open(first);
  void engine.describe().then((answer) => {
    description.value = answer;
  });

  return {
    ...reader,
    ...overview,
    ...makings,
    ...createRoles(editor.document, description),
    ...set,
    ...createStudies({ engine, editor, show: set.showSheet }),
    ...createCellCommands({
      editor,
      blocks,
      shown: () => set.shownSheet.peek().id,
      removed,
    }),
    ...createVariants({
      editor,
      blocks,
      reader,
      shown: () => set.shownSheet.peek().id,
      told: removed,
      lost: (title, text) => tell({ title, sentences: [], text }),
      copy: ports.copy,
    }),
    document: editor.document,
    snapshot,
    beside,
    besideOf,
    state: computed(() =>
      sheetState(faults(), stops.value.length + breaches.value.length, working(), unlimited.value.length),
    ),
    stops,
    breaches,
    unlimited,
    undoSays: editor.undoSays,
    redoSays: editor.redoSays,
    sweeps,
    traces,
    fits,
    flown,
    dayCard: (form) => engine.dayCard(form),
    trim: (observation) => engine.trim(observation),
    mends,
    bests,
    weighings,
    variantGhosts: ghosts.shown,
    moving: editor.dragging,
    notices,
    choosing: signal(false),
    asking: signal(undefined),
    offered: description,
    picking: signal(undefined),
    setText(path, text) {
      const before = textAt(editor.document.value, path) ?? '';
      const kept = textToKeep(reader.name(path), before, text);
      // What it is made of is kept with what the scale says.
      editor.settle();
      const weighed = kept === before ? undefined : weighingPart(editor.document.value, path, kept, reader.value);
      if (weighed) editor.change(weighed, title(path));
      else setTexts([[path, kept]], title(path));
    },
    mend({ path, repair }) {
      editor.settle();
      const text = textAt(editor.document.value, path);
      if (repair && text !== undefined) setTexts([[path, repaired(text, repair)]], title(path));
    },
    setTexts,
    edit(changes, says) {
      editor.settle();
      const made = changes(editor.document.value);
      if (made.length > 0) editor.change(made, says);
    },
    units: () => editor.document.value.units,
    takesText: (path) => textAt(editor.document.peek(), path) !== undefined,
    check: (path, text) => engine.check(path, text),
    typing: editor.typing,
    settle: editor.settle,
    drag: (path, text) => editor.drag(path, text, title(path)),
    dragTexts: editor.dragTexts,
    rest: editor.rest,
    undo: editor.undo,
    redo: editor.redo,
    changeCell: (cell) => editor.change([{ change: 'cell', cell }], cell.title),
    changeHead: (head, says) => editor.change([{ change: 'head', head }], says),
    arrange: (cell) => editor.arrange({ change: 'cell', cell }),
    tables: engine,
    takeBaseline: () =>
      editor.change([{ change: 'head', head: { baseline: {}, baseline_design: null } }], 'the baseline'),
    returnToBaseline() {
      editor.settle();
      const then = baselineOf(editor.document.value);
      if (then) editor.change([{ change: 'design', document: { ...then, baseline: {} } }], 'return to the baseline');
    },
    isComputed(text, unit) {
      const read = readText(text, unit);
      return read.ok && !isOneNumber(read.expression);
    },
    madeOf: followMadeOf(engine, editor.document, snapshot, editor.dragging),
    forgotten: (parts) => engine.forgotten(parts),
    templates: () => engine.templates(),
    reconcile: (found) => engine.reconcile(found),
    blockNamed: (kind) => description.value?.blocks.find((block) => block.kind === kind),
    tableNamed: (name) => description.value?.tables.find((table) => table.name === name),
    refusals,
    looking,
    look(at) {
      looking.value = at;
      editor.look(at?.document);
    },
    replace,
    follow: editor.follow,
    openFile,
    openHandedOn: (text) => openFrom(openText(text), 'the design that was handed on', false),
    openDemo: async (design) => openFrom(openText(await ports.loadDemo(design)), 'the demo', false),
    save() {
      editor.settle();
      const text = serialise(editor.document.value);
      saveText(text, fileName(editor.document.value.title));
      if (!looking.value) ports.keep.filed?.(text);
    },
    dismiss(notice) {
      notices.value = notices.value.filter((other) => other !== notice);
    },
    tell,
  };
}

const repaired = (text: string, { from, to, text: better }: Repair): string =>
  text.slice(0, from) + better + text.slice(to);

const isOneNumber = (e: Expression): boolean =>
  e.kind === 'literal' || (e.kind === 'negative' && e.of.kind === 'literal');

/** A file or a kept sheet that could not be opened, place by place. */
export function refusal(name: string, { message, problems }: Extract<Opened, { ok: false }>): Notice {
  return { title: `${name}: ${message}`, sentences: problems.length > 1 ? problems.map((each) => each.message) : [] };
}
