import { type EditorState, type Extension, StateEffect, StateField } from '@codemirror/state';
import { type Command, EditorView, hoverTooltip, keymap, showTooltip, type Tooltip } from '@codemirror/view';
import { type About, aboutAt } from './about';
import { saidOf, sentenceOf } from './said';
import type { Vocabulary } from './vocabulary';

/** Key that says what stands at the caret: the one for help everywhere. */
export const TELL_KEY = 'F1';

const tell = StateEffect.define<About | undefined>();

/** What the pointer rests on, and on a key what the caret stands in. */
export function telling(vocabulary: Vocabulary): Extension {
  const told = StateField.define<Tooltip | null>({
    create: () => null,
    update(shown, transaction) {
      for (const effect of transaction.effects) if (effect.is(tell)) return effect.value ? tipOf(effect.value) : null;
      return transaction.docChanged || transaction.selection ? null : shown;
    },
    provide: (field) => showTooltip.from(field),
  });
  const close: Command = (view) => {
    if (view.state.field(told) === null) return false;
    view.dispatch({ effects: tell.of(undefined) });
    return true;
  };
  return [
    told,
    hoverTooltip((view, at) => {
      const about = aboutAt(view.state.doc.toString(), at, vocabulary);
      return about ? tipOf(about) : null;
    }),
    keymap.of([
      { key: TELL_KEY, run: (view) => tellHere(view, vocabulary), preventDefault: true },
      { key: 'Escape', run: close },
    ]),
  ];
}

/** Shows and says what stands at the caret. */
export function tellHere(view: EditorView, vocabulary: Vocabulary): boolean {
  const about = aboutHere(view.state, vocabulary);
  if (!about) return false;
  view.dispatch({ effects: [tell.of(about), EditorView.announce.of(sentenceOf(about))] });
  return true;
}

export const aboutHere = (state: EditorState, vocabulary: Vocabulary): About | undefined =>
  aboutAt(state.doc.toString(), state.selection.main.head, vocabulary);

const tipOf = (about: About): Tooltip => ({
  pos: about.from,
  end: about.to,
  above: true,
  create: () => ({ dom: saidOf(about) }),
});
