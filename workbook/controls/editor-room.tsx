import { untracked } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { type EditorRequest, editorMaker, type OpenEditor, type TextRange } from '../editor/index';
import { useSheet } from '../store/context';
import type { Sheet } from '../store/sheet';

/** What an editor begins with. */
export interface Opening {
  readonly draft: string;
  /** Missing: everything is selected. */
  readonly selection: TextRange | undefined;
}

interface EditorRoomProps {
  readonly class: string;
  /** Wider than its place where the text needs it. */
  readonly grows: boolean;
  /** The path whose text a formula is; missing: words over many lines. */
  readonly path?: string;
  /** Attributes of the place to type in. */
  readonly attributes: Readonly<Record<string, string>>;
  /** The text as it stands in the document. */
  readonly text: string;
  readonly opening: Opening;
  onDraft(text: string): void;
  /** The typing is over; `text` is missing when it's to be forgotten. */
  onLeave(text: string | undefined, byKeys: boolean): void;
  onUndoBeyond(): void;
}

/** Where an editor stands on the page, in the place of the plain field. */
export function EditorRoom(props: EditorRoomProps) {
  const sheet = useSheet();
  const room = useRef<HTMLDivElement>(null);
  const editor = useRef<OpenEditor>(undefined);
  const latest = useRef(props);
  latest.current = props;

  useLayoutEffect(() => {
    if (props.grows) makeRoom(room.current!);
    const leave = (kept: boolean, byKeys: boolean): void =>
      latest.current.onLeave(kept ? editor.current?.text() : undefined, byKeys);
    const open = editorMaker()!({
      parent: room.current!,
      formula: props.path === undefined ? undefined : formulaOf(sheet, props.path),
      text: props.text,
      ...props.opening,
      attributes: props.attributes,
      typed: (draft) => latest.current.onDraft(draft),
      pause: sheet.settle,
      finish: (byKeys) => leave(true, byKeys),
      abandon: () => leave(false, true),
      undoBeyond: () => {
        leave(false, true);
        latest.current.onUndoBeyond();
      },
      redoBeyond: () => {
        leave(false, true);
        sheet.redo();
      },
    });
    editor.current = open;
    return () => open.close();
  }, []);
  useLayoutEffect(() => editor.current?.show(props.text), [props.text]);

  return (
    <div class={`${props.class} editor-place ${props.grows ? 'grows' : ''}`}>
      <div ref={room} class="editor-room" />
    </div>
  );
}

/** What the open sheet has names for and says of a text, as it is at the moment of asking. */
const formulaOf = (sheet: Sheet, path: string): EditorRequest['formula'] => ({
  vocabulary: {
    path,
    names: () => sheet.names.peek().values(),
    name: (each) => sheet.names.peek().get(each),
    shown: (each) => untracked(() => sheet.shown(each)),
  },
  async check(text) {
    // An engine that has stopped is told of elsewhere.
    const checked = await sheet.check(path, text).catch(() => undefined);
    return checked === undefined || checked.ok ? undefined : checked.fault;
  },
});

/** Least distance from the edges of the window, px. */
const EDGE = 8;
/** Longer lines are hard to read, px. */
const WIDEST = 480;

/** Lets the editor grow away from the side at which its text stands, as far as the window goes. */
function makeRoom(room: HTMLElement): void {
  const place = room.parentElement!;
  const { left, right } = place.getBoundingClientRect();
  const fromRight = ['right', 'end'].includes(getComputedStyle(place).textAlign);
  place.classList.toggle('from-right', fromRight);
  const free = fromRight ? right - EDGE : document.documentElement.clientWidth - left - EDGE;
  room.style.setProperty('--editor-room', `${Math.min(free, WIDEST)}px`);
}
