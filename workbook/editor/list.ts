import {
  acceptCompletion,
  autocompletion,
  type Completion,
  closeCompletion,
  completionStatus,
  moveCompletionSelection,
  startCompletion,
} from '@codemirror/autocomplete';
import { EditorState, type Extension, Prec } from '@codemirror/state';
import { type Command, type EditorView, keymap } from '@codemirror/view';
import { proposalsFrom } from './proposals';
import type { Vocabulary } from './vocabulary';

/** Proposals at a time: as many as can be read at a glance, and the list needs no scrolling of its own. */
const SHOWN = 6;

/**
 * The list of what could be written. It opens by itself while a word is typed, and by the down arrow; nothing in it is picked
 * until an arrow goes into it, so Enter still means that the text is done.
 */
export function proposalList(vocabulary: Vocabulary): Extension {
  return [
    autocompletion({
      override: [proposalsFrom(vocabulary)],
      icons: false,
      selectOnOpen: false,
      interactionDelay: 0,
      defaultKeymap: false,
      maxRenderedOptions: SHOWN,
      tooltipClass: () => 'editor-list',
      addToOptions: [{ render: (option) => shownBeside(option, vocabulary), position: 90 }],
    }),
    EditorState.phrases.of({ Completions: 'What could stand here' }),
    Prec.highest(
      keymap.of([
        { key: 'ArrowDown', run: downInto },
        { key: 'ArrowUp', run: moveCompletionSelection(false) },
        { key: 'PageDown', run: moveCompletionSelection(true, 'page') },
        { key: 'PageUp', run: moveCompletionSelection(false, 'page') },
        { key: 'Enter', run: acceptCompletion },
        { key: 'Escape', run: closeList },
      ]),
    ),
  ];
}

/** Within the list one down; from the last line of the text into the list. */
const downInto: Command = (view) => {
  if (completionStatus(view.state) === 'active') return moveCompletionSelection(true)(view);
  return onLastLine(view) && startCompletion(view);
};

/** A list that is only about to come doesn't take the key. */
const closeList: Command = (view) => {
  const open = completionStatus(view.state) === 'active';
  closeCompletion(view);
  return open;
};

function onLastLine(view: EditorView): boolean {
  const { doc, selection } = view.state;
  const here = view.coordsAtPos(selection.main.head);
  const end = view.coordsAtPos(doc.length);
  return !here || !end || here.bottom >= end.bottom - 1;
}

/** The present value beside a name, made only for what is on the screen. */
function shownBeside(option: Completion, vocabulary: Vocabulary): Node | null {
  if (!vocabulary.name(option.label)) return null;
  const value = document.createElement('span');
  value.className = 'editor-list-value';
  value.textContent = vocabulary.shown(option.label);
  return value;
}
