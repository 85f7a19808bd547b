import { history, redo, redoDepth, standardKeymap, undo, undoDepth } from '@codemirror/commands';
import { type Extension, Prec } from '@codemirror/state';
import { type Command, keymap } from '@codemirror/view';
import type { EditorRequest } from './request';

/** Keys of a place to type in. Tab has no part in it: it goes on to the next place, as everywhere on the page. */
export function keysOf(request: EditorRequest): Extension {
  const ends = keymap.of([
    { key: request.formula ? 'Enter' : 'Mod-Enter', run: always(() => request.finish(true)) },
    { key: 'Escape', run: always(() => request.abandon()) },
  ]);
  const back = whileAny(undo, undoDepth, request.undoBeyond);
  const forward = whileAny(redo, redoDepth, request.redoBeyond);
  const steps = keymap.of([
    { key: 'Mod-z', run: back, preventDefault: true },
    { key: 'Mod-Shift-z', run: forward, preventDefault: true },
    { key: 'Mod-y', run: forward, preventDefault: true },
  ]);
  // What closes something that stands over the text comes before these and after what a list of proposals takes.
  return [history(), Prec.high(steps), ends, keymap.of(standardKeymap)];
}

const always = (run: () => void): Command => {
  return () => {
    run();
    return true;
  };
};

/** Takes steps in the text while there are any to take in it, then in the document. */
function whileAny(command: typeof undo, depth: typeof undoDepth, beyond: () => void): Command {
  return (view) => {
    if (depth(view.state) > 0) return command(view);
    beyond();
    return true;
  };
}
