import { type Diagnostic, linter } from '@codemirror/lint';
import type { Extension } from '@codemirror/state';
import type { EditorView } from '@codemirror/view';
import { type Fault, unparted } from '../../engine/index';

/** How long a text rests before it is checked, ms: shorter than a glance, longer than the next stroke. */
const REST = 250;

/** Underlines what is wrong with the text as it stands, without anything of it being taken. */
export function faultsInPlace(check: (text: string) => Promise<Fault | undefined>): Extension {
  return linter(
    async (view) => {
      const text = view.state.doc.toString();
      const fault = await check(text);
      return fault ? [diagnosticOf(fault, text)] : [];
    },
    // The sentences stand beneath the text, where keys and fingers reach them too.
    { delay: REST, tooltipFilter: () => [] },
  );
}

/** A fault of the text; one without a place of its own has the whole text as its place. */
export function diagnosticOf({ from = 0, to, state, message, repair }: Fault, text: string): Diagnostic {
  const inside = (at: number): number => Math.min(Math.max(0, at), text.length);
  return {
    from: inside(from),
    to: inside(to ?? text.length),
    severity: state === 'fault' ? 'error' : 'info',
    message,
    ...(repair
      ? {
          actions: [
            {
              name: `Write ${unparted(repair.text)}`,
              apply(view: EditorView): void {
                // What was meant is known for the text that was looked at, and for no other.
                if (view.state.doc.toString() !== text) return;
                // First: the press goes with what it mends, and the focus with it would leave the text.
                view.focus();
                view.dispatch({
                  changes: { from: repair.from, to: repair.to, insert: repair.text },
                  selection: { anchor: repair.from + repair.text.length },
                  userEvent: 'input',
                });
              },
            },
          ],
        }
      : {}),
  };
}
