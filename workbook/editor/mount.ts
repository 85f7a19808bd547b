import { EditorState, type Extension, Transaction } from '@codemirror/state';
import { EditorView } from 'codemirror';
import { beneathText } from './beneath';
import { faultsInPlace } from './faults';
import { keysOf } from './keys';
import { formulaText } from './language';
import { proposalList } from './list';
import type { EditorRequest, OpenEditor } from './request';
import { telling } from './tell';

/** Puts an editor into its room, with the focus in it. */
export function mountEditor(request: EditorRequest): OpenEditor {
  const tidy = request.formula ? oneLine : (text: string): string => text;
  let stands = tidy(request.text);
  const view = new EditorView({
    parent: request.parent,
    state: EditorState.create({
      doc: stands,
      extensions: extensionsOf(request, (state) => state.doc.toString() !== stands),
    }),
  });
  const draft = tidy(request.draft ?? stands);
  // What was typed before is an edit of its own, so that it can be taken back.
  if (draft !== stands) view.dispatch({ changes: { from: 0, to: stands.length, insert: draft }, userEvent: 'input' });
  view.dispatch({ selection: selectionIn(draft, request.selection), scrollIntoView: true });
  view.focus();
  const watched = new AbortController();
  view.dom.addEventListener('focusout', (event) => onFocusOut(event, view, request), watched);
  return {
    text: () => view.state.doc.toString(),
    changed: () => view.state.doc.toString() !== stands,
    show(text) {
      const typed = view.state.doc.toString();
      if (typed.trim() === text.trim()) stands = typed;
      if (typed === text || typed !== stands) return;
      stands = tidy(text);
      view.dispatch({
        changes: { from: 0, to: view.state.doc.length, insert: stands },
        annotations: Transaction.addToHistory.of(false),
      });
    },
    close() {
      watched.abort();
      view.destroy();
    },
  };
}

/** What stands over the text belongs to it; so does a window that is only behind another one. */
function onFocusOut(event: FocusEvent, view: EditorView, request: EditorRequest): void {
  if (event.relatedTarget instanceof Node && view.dom.contains(event.relatedTarget)) return;
  if (view.dom.contains(view.root.activeElement)) request.pause();
  else request.finish(false);
}

function extensionsOf(request: EditorRequest, changed: (state: EditorState) => boolean): Extension {
  const { formula } = request;
  return [
    ...(formula ? formulaExtensions(formula, changed) : []),
    keysOf(request),
    EditorView.updateListener.of((update) => {
      if (update.docChanged) request.typed(update.state.doc.toString());
    }),
    EditorView.lineWrapping,
    EditorView.contentAttributes.of({
      'aria-multiline': String(!formula),
      enterkeyhint: formula ? 'done' : 'enter',
      ...request.attributes,
    }),
  ];
}

function formulaExtensions(
  { vocabulary, check }: NonNullable<EditorRequest['formula']>,
  changed: (state: EditorState) => boolean,
): Extension[] {
  return [
    formulaText,
    singleLine,
    proposalList(vocabulary),
    telling(vocabulary),
    faultsInPlace(check),
    beneathText(vocabulary, changed),
  ];
}

const oneLine = (text: string): string => text.replace(/\s*[\r\n]+\s*/g, ' ');

/** A formula stands in one line: ends of lines in what is put in become spaces. */
const singleLine: Extension = [
  EditorView.clipboardInputFilter.of(oneLine),
  EditorState.changeFilter.of((transaction) => transaction.newDoc.lines === 1),
];

function selectionIn({ length }: string, range: EditorRequest['selection']): { anchor: number; head: number } {
  const inside = (at: number): number => Math.min(Math.max(0, at), length);
  return range ? { anchor: inside(range.from), head: inside(range.to) } : { anchor: 0, head: length };
}
