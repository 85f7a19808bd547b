import { batch, computed, type ReadonlySignal, signal } from '@preact/signals';
import { applyChange, applyChanges, type Change, type Document, keepingBaseline, textAt } from '../../engine/index';
import { type Edit, noHistory, record, stepBack, stepForward } from './history';

export interface EditorPorts {
  /** The document is new. `texts`: the only texts that differ; missing: anything may differ. */
  changed(document: Document, texts?: ReadonlyMap<string, string>): void;
  /** A whole edit is done, nothing is being dragged: worth keeping. `says` is missing where only the arrangement changed. */
  committed(document: Document, says?: string): void;
  /** Opening another design was taken back or done again: this is the open one now. */
  turned?(design: string): void;
  /** Whether the design may be changed at all; it may where this isn't said. */
  mayChange?(): boolean;
  /** Something was to be changed that may not be. */
  refused?(): void;
  /** Milliseconds. */
  now(): number;
  /** Freezes every document, so that a slip in the program shows. */
  readonly frozen: boolean;
}

/** The document and what was done to it. Every edit is a list of changes with its inverse; a drag is one edit, made when it rests. */
export interface Editor {
  readonly document: ReadonlySignal<Document>;
  readonly dragging: ReadonlySignal<boolean>;
  /** What Undo would take back and Redo do again. */
  readonly undoSays: ReadonlySignal<string | undefined>;
  readonly redoSays: ReadonlySignal<string | undefined>;
  /** `opens`: the edit puts another design in place of the open one. */
  change(changes: readonly Change[], says: string, opens?: Edit['opens']): void;
  /**
   * A text is being typed somewhere: `settle` makes an edit of what stands there so far. It's called before any other edit,
   * so that nothing typed is lost or comes after it. Gives back what ends the typing.
   */
  typing(settle: () => void): () => void;
  /** Makes edits of all that is under way: a text being typed, a drag. */
  settle(): void;
  /** The finger is down: the document follows, the edit is made at `rest`. */
  drag(path: string, text: string, says: string): void;
  /** The same of several texts that move together. */
  dragTexts(texts: ReadonlyMap<string, string>, says: string): void;
  /** The finger is up. Strokes of a key that follow each other closely become one edit. */
  rest(byKeys?: boolean): void;
  /** Changes how the sheet is shown: nothing to take back, nothing to compute. */
  arrange(change: Change): void;
  undo(): void;
  redo(): void;
  /** Shows another document for a while, which can't be changed; undefined ends that. */
  look(document: Document | undefined): void;
  /** Another page has changed the design: it is like that now, and nothing of this page's own is left to take back. */
  follow(document: Document): void;
}

interface Drag {
  readonly paths: readonly string[];
  readonly says: string;
  readonly from: Document;
}

export function createEditor(first: Document, ports: EditorPorts): Editor {
  const { frozen } = ports;
  const document = signal(first);
  const history = signal(noHistory);
  const drag = signal<Drag | undefined>(undefined);

  /** What is put back when looking at another document ends. */
  let ours: Document | undefined;

  function barred(): boolean {
    const may = !ours && (ports.mayChange?.() ?? true);
    if (!may) ports.refused?.();
    return !may;
  }

  function commit(
    from: Document,
    changes: readonly Change[],
    says: string,
    also: Pick<Edit, 'key' | 'opens'> = {},
  ): void {
    const whole = keepingBaseline(from, changes);
    const done = applyChanges(from, whole, { frozen });
    batch(() => {
      history.value = record(history.value, { says, changes: whole, inverse: done.inverse, at: ports.now(), ...also });
      document.value = done.document;
    });
    ports.committed(done.document, says);
  }

  let typed: (() => void) | undefined;
  let settling = false;

  /** What is only shown differently is nothing to compute. */
  function tell(changes: readonly Change[]): void {
    if (changes.some((each) => each.change !== 'fold')) ports.changed(document.value, textsOf(changes));
  }

  function settle(): void {
    rest();
    // The edit that is made of a text comes back here.
    if (settling || !typed) return;
    settling = true;
    try {
      typed();
    } finally {
      settling = false;
    }
  }

  function step(by: typeof stepBack, side: 'changes' | 'inverse'): void {
    settle();
    const moved = by(history.value);
    if (!moved) return;
    const { says, opens } = moved.edit;
    if ((ours || !opens) && barred()) return;
    const changes = moved.edit[side];
    if (opens) ports.turned?.(side === 'inverse' ? opens.from : opens.to);
    batch(() => {
      history.value = moved.history;
      document.value = applyChanges(document.value, changes, { frozen }).document;
    });
    tell(changes);
    ports.committed(document.value, side === 'inverse' ? `taken back: ${says}` : says);
  }

  function rest(byKeys = false): void {
    const held = drag.value;
    if (!held) return;
    drag.value = undefined;
    const changes = held.paths.flatMap((path): Change[] => {
      const text = textAt(document.value, path);
      return text === undefined || text === textAt(held.from, path) ? [] : [{ change: 'text', path, text }];
    });
    if (changes.length === 0) return;
    commit(held.from, changes, held.says, { key: byKeys ? `keys ${held.paths.join(' ')}` : undefined });
  }

  function dragTexts(texts: ReadonlyMap<string, string>, says: string): void {
    if (barred()) return;
    const paths = [...texts.keys()];
    if (drag.value?.paths.join(' ') !== paths.join(' ')) {
      settle();
      drag.value = { paths, says, from: document.value };
    }
    const changes = [...texts].map(([path, text]): Change => ({ change: 'text', path, text }));
    document.value = applyChanges(document.value, changes, { frozen }).document;
    ports.changed(document.value, texts);
  }

  function look(other: Document | undefined): void {
    if (!other && !ours) return;
    settle();
    ours ??= document.value;
    document.value = other ?? ours;
    if (!other) ours = undefined;
    ports.changed(document.value);
  }

  return {
    document,
    dragging: computed(() => drag.value !== undefined),
    undoSays: computed(() => history.value.past.at(-1)?.says),
    redoSays: computed(() => history.value.future[0]?.says),
    change(changes, says, opens) {
      settle();
      if (opens) look(undefined);
      else if (barred()) return;
      commit(document.value, changes, says, { opens });
      tell(changes);
    },
    typing(text) {
      settle();
      typed = text;
      return () => {
        if (typed === text) typed = undefined;
      };
    },
    settle,
    drag: (path, text, says) => dragTexts(new Map([[path, text]]), says),
    dragTexts,
    rest,
    arrange(change) {
      // A drag becomes an edit of the document as it was when it began, which knows nothing of this.
      rest();
      document.value = applyChange(document.value, change, { frozen }).document;
      if (!ours) ports.committed(document.value);
    },
    undo: () => step(stepBack, 'inverse'),
    redo: () => step(stepForward, 'changes'),
    look,
    follow(next) {
      drag.value = undefined;
      batch(() => {
        history.value = noHistory;
        if (ours) ours = next;
        else document.value = next;
      });
      ports.changed(document.value);
    },
  };
}

/** The texts that a list of changes sets, when it does nothing else. */
function textsOf(changes: readonly Change[]): ReadonlyMap<string, string> | undefined {
  const texts = new Map<string, string>();
  for (const change of changes) {
    if (change.change === 'fold') continue;
    if (change.change !== 'text') return undefined;
    texts.set(change.path, change.text);
  }
  return texts;
}
