import { EditorState, type TransactionSpec } from '@codemirror/state';
import type { EditorView } from '@codemirror/view';
import { expect, test, vi } from 'vitest';
import type { Fault } from '../../../engine/index';
import { diagnosticOf } from '../../../workbook/editor/faults';

const fault: Fault = {
  cell: 'c1',
  path: 'tip_weight',
  state: 'fault',
  from: 4,
  to: 21,
  message: 'Nothing is called balast.tip_weight. Did you mean ballast.tip_weight?',
  repair: { from: 4, to: 21, text: 'ballast.tip_weight' },
};
const text = '2 * balast.tip_weight';

/** As much of a view as a mend needs. */
function viewOf(doc: string) {
  let state = EditorState.create({ doc });
  const focus = vi.fn();
  const view = {
    get state() {
      return state;
    },
    focus,
    dispatch(spec: TransactionSpec) {
      state = state.update(spec).state;
    },
  };
  return { view: view as unknown as EditorView, focus, doc: () => state.doc.toString() };
}

test('a fault is underlined where it lies, with its sentence and the press that mends it', () => {
  expect(diagnosticOf(fault, text)).toMatchObject({
    from: 4,
    to: 21,
    severity: 'error',
    message: 'Nothing is called balast.tip_weight. Did you mean ballast.tip_weight?',
    actions: [{ name: 'Write ballast.tip_weight' }],
  });
});

test('the mend writes what was meant, and keeps the focus in the text', () => {
  const { view, focus, doc } = viewOf(text);
  diagnosticOf(fault, text).actions![0]!.apply(view, 4, 21);
  expect(doc()).toBe('2 * ballast.tip_weight');
  expect(view.state.selection.main.head).toBe('2 * ballast.tip_weight'.length);
  expect(focus).toHaveBeenCalled();
});

test('the press that mends holds number and unit together; what it writes is as it is typed', () => {
  const { view, doc } = viewOf('mm 46');
  const [mend] = diagnosticOf({ ...fault, repair: { from: 0, to: 5, text: '46 mm' } }, 'mm 46').actions!;
  expect(mend!.name).toBe('Write 46\u00a0mm');
  mend!.apply(view, 0, 5);
  expect(doc()).toBe('46 mm');
});

test('a text that has changed since is not mended by what was meant before', () => {
  const { view, doc } = viewOf('3 g + 2 * balast.tip_weight');
  diagnosticOf(fault, text).actions![0]!.apply(view, 4, 21);
  expect(doc()).toBe('3 g + 2 * balast.tip_weight');
});

test('a fault without a place has the whole text, one beyond its end stays inside, one that waits is no error', () => {
  const { from: _, to: __, repair: ___, ...whole } = fault;
  expect(diagnosticOf(whole, text)).toMatchObject({ from: 0, to: text.length });
  expect(diagnosticOf({ ...whole, from: 3, to: 99 }, text)).toMatchObject({ from: 3, to: text.length });
  expect(diagnosticOf({ ...whole, state: 'waits' }, text).severity).toBe('info');
  expect(diagnosticOf(whole, text).actions).toBeUndefined();
});
