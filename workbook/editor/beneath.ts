import { completionStatus } from '@codemirror/autocomplete';
import { type Diagnostic, forEachDiagnostic, setDiagnosticsEffect } from '@codemirror/lint';
import { type EditorState, type Extension, StateField } from '@codemirror/state';
import { EditorView, showTooltip, type Tooltip, type TooltipView, type ViewUpdate } from '@codemirror/view';
import type { About } from './about';
import { aboutHere, TELL_KEY, tellHere } from './tell';
import type { Vocabulary } from './vocabulary';

/** What stands beneath the text: a fault with the press that mends it, and the key that tells what a word is. */
interface Beneath {
  readonly fault: Diagnostic | undefined;
  /** The name or the function at the caret that something is known of. */
  readonly word: string | undefined;
}

/** `changed`: whether the text is another one than the sheet's, whose fault the sheet shows already. */
export function beneathText(vocabulary: Vocabulary, changed: (state: EditorState) => boolean): Extension {
  const beneath = (state: EditorState): Beneath => ({
    fault: changed(state) ? faultOf(state) : undefined,
    word: askable(aboutHere(state, vocabulary)),
  });
  const tip: Tooltip = { pos: 0, above: false, create: (view) => drawn(view, beneath, vocabulary) };
  const field = StateField.define<Tooltip | null>({
    create: () => null,
    update(_, { state }) {
      if (completionStatus(state) === 'active') return null;
      const { fault, word } = beneath(state);
      return fault || word !== undefined ? tip : null;
    },
    provide: (self) => showTooltip.from(self),
  });
  return [field, EditorView.contentAttributes.of(invalid), EditorView.updateListener.of(sayFault)];
}

/** Units and words are told by the key too, but it is seldom asked what they are. */
const askable = (about: About | undefined): string | undefined =>
  about?.kind === 'name' || about?.kind === 'function' ? about.word : undefined;

function faultOf(state: EditorState): Diagnostic | undefined {
  let first: Diagnostic | undefined;
  forEachDiagnostic(state, (each) => {
    first ??= each;
  });
  return first;
}

const invalid = (view: EditorView): Record<string, string> | null =>
  faultOf(view.state)?.severity === 'error' ? { 'aria-invalid': 'true' } : null;

/** A new fault is said once, when there's time. */
function sayFault({ view, transactions, startState }: ViewUpdate): void {
  const message = faultOf(view.state)?.message;
  const looked = transactions.some(({ effects }) => effects.some((effect) => effect.is(setDiagnosticsEffect)));
  if (!looked || message === undefined || message === faultOf(startState)?.message) return;
  setTimeout(() => {
    if (view.dom.isConnected) view.dispatch({ effects: EditorView.announce.of(message) });
  });
}

function drawn(view: EditorView, beneath: (state: EditorState) => Beneath, vocabulary: Vocabulary): TooltipView {
  const dom = document.createElement('div');
  dom.className = 'editor-beneath';
  // A press here is no leaving of the text.
  dom.addEventListener('mousedown', (event) => event.preventDefault());
  dom.addEventListener('keydown', (event) => {
    if (event.key === 'Escape') view.focus();
  });
  let shown: Beneath = { fault: undefined, word: undefined };
  const draw = (next: Beneath): void => {
    if (next.fault !== shown.fault || next.word !== shown.word || !dom.hasChildNodes()) {
      dom.replaceChildren(...faultLine(view, next.fault), ...wordLine(view, next.word, vocabulary));
    }
    shown = next;
  };
  draw(beneath(view.state));
  return { dom, update: ({ state }) => draw(beneath(state)) };
}

function faultLine(view: EditorView, fault: Diagnostic | undefined): HTMLElement[] {
  if (!fault) return [];
  const line = document.createElement('p');
  line.className = `editor-fault ${fault.severity === 'error' ? 'fault' : 'waits'}`;
  line.append(fault.message);
  for (const { name, apply } of fault.actions ?? []) {
    line.append(
      ' ',
      press('word mend', name, () => apply(view, fault.from, fault.to)),
    );
  }
  return [line];
}

function wordLine(view: EditorView, word: string | undefined, vocabulary: Vocabulary): HTMLElement[] {
  if (word === undefined) return [];
  const button = press('word quiet', `What is ${word}? (${TELL_KEY})`, () => tellHere(view, vocabulary));
  // By keys it's the key that is said in it.
  button.tabIndex = -1;
  return [button];
}

function press(look: string, words: string, run: () => void): HTMLButtonElement {
  const button = document.createElement('button');
  button.type = 'button';
  button.className = look;
  button.textContent = words;
  button.addEventListener('click', run);
  return button;
}
