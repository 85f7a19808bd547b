import 'fake-indexeddb/auto';
import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import { cellsOf, type Document, openText, serialise, textAt } from '../../../engine/index';
import { createSheet, type Sheet } from '../../../workbook/store/sheet';
import { newBrowser } from './keep/pages';
import { type Draft, PATHS, type Path, Plain, type State } from './plain-sheet';
import { smallEngine } from './small-engine';
import { smallSheet } from './small-sheet';

const saved = vi.hoisted(() => ({ text: '' }));
vi.mock('../../../workbook/store/files', async (real) => ({
  ...(await real<object>()),
  saveText(text: string) {
    saved.text = text;
  },
}));

/** Few, so that a text is often what stood there before. */
const TEXTS = ['21 g', '30 g', 'oops', '18.3 m'] as const;

type Action =
  | { readonly does: 'begin to type' | 'set' | 'drag'; readonly path: Path; readonly text: string }
  | { readonly does: 'type' | 'title'; readonly text: string }
  | { readonly does: 'leave' | 'escape' | 'undo key' | 'let go' | 'undo' | 'redo' | 'fold' | 'save' | 'reload' };

const action: fc.Arbitrary<Action> = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.record({
      does: fc.constantFrom('begin to type' as const, 'set' as const, 'drag' as const),
      path: fc.constantFrom(...PATHS),
      text: fc.constantFrom(...TEXTS),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      does: fc.constantFrom('type' as const, 'title' as const),
      text: fc.constantFrom(...TEXTS),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      does: fc.constantFrom(
        ...(['leave', 'escape', 'undo key', 'let go', 'undo', 'redo', 'fold', 'save', 'reload'] as const),
      ),
    }),
  },
);

/** One page of a browser, with a text being typed as the page's own fields do it. */
async function openPage(browser: ReturnType<typeof newBrowser>) {
  const { keeper, store } = browser.page();
  const kept = await keeper.start();
  const opened = kept === undefined ? undefined : openText(kept);
  const document: Document = opened?.ok ? opened.document : smallSheet;
  if (kept === undefined) keeper.startWith(serialise(document));
  let clock = 0;
  const sheet = createSheet(document, {
    engine: smallEngine().engine,
    keep: keeper,
    loadDemo: async () => '',
    frozen: true,
    now: () => {
      clock += 1000;
      return clock;
    },
  });
  let draft: Draft | undefined;
  let done = (): void => {};
  const keep = (): void => {
    if (!draft || draft.text === draft.kept) return;
    draft.kept = draft.text;
    sheet.setText(draft.path, draft.text);
  };
  const end = (): void => {
    draft = undefined;
    done();
  };
  return {
    sheet,
    keeper,
    store,
    begin(path: Path, text: string): void {
      done();
      done = sheet.typing(keep);
      const stands = textAt(sheet.document.value, path)!;
      draft = { path, text: stands, kept: stands, strokes: [] };
      this.type(text);
    },
    type(text: string): void {
      if (!draft) return;
      if (draft.text !== text) draft.strokes.push(draft.text);
      draft.text = text;
    },
    leave(): void {
      done();
      keep();
      draft = undefined;
    },
    escape: end,
    undoKey(): void {
      const before = draft?.strokes.pop();
      if (draft && before !== undefined) draft.text = before;
      else {
        end();
        sheet.undo();
      }
    },
  };
}

type Page = Awaited<ReturnType<typeof openPage>>;

/** Does the same to both. */
function act(page: Page, plain: Plain, action: Action): void {
  const { sheet } = page;
  switch (action.does) {
    case 'begin to type': {
      const stands = () => plain.now.texts[action.path];
      if (plain.draft) page.leave();
      plain.settle();
      page.begin(action.path, action.text);
      plain.draft = { path: action.path, text: stands(), kept: stands(), strokes: [] };
      if (stands() !== action.text) plain.draft.strokes.push(stands());
      plain.draft.text = action.text;
      return;
    }
    case 'type': {
      const { draft } = plain;
      page.type(action.text);
      if (!draft) return;
      if (draft.text !== action.text) draft.strokes.push(draft.text);
      draft.text = action.text;
      return;
    }
    case 'leave':
      page.leave();
      if (plain.draft && plain.draft.text !== plain.draft.kept) plain.settle();
      plain.draft = undefined;
      return;
    case 'escape':
      page.escape();
      plain.draft = undefined;
      return;
    case 'undo key': {
      const before = plain.draft?.strokes.pop();
      page.undoKey();
      if (plain.draft && before !== undefined) plain.draft.text = before;
      else {
        plain.draft = undefined;
        plain.settle();
        plain.step(plain.past, plain.future);
      }
      return;
    }
    case 'set':
      sheet.setText(action.path, action.text);
      plain.settle();
      plain.set(action.path, action.text);
      return;
    case 'title':
      sheet.changeHead({ title: action.text }, 'title');
      plain.settle();
      plain.commit({ ...plain.now, title: action.text });
      return;
    case 'drag':
      sheet.drag(action.path, action.text);
      if (plain.dragged?.path !== action.path) {
        plain.settle();
        plain.dragged = { path: action.path, from: plain.now };
      }
      plain.now = { ...plain.now, texts: { ...plain.now.texts, [action.path]: action.text } };
      return;
    case 'let go':
      sheet.rest();
      plain.rest();
      return;
    case 'undo':
      sheet.undo();
      plain.settle();
      plain.step(plain.past, plain.future);
      return;
    case 'redo':
      sheet.redo();
      plain.settle();
      plain.step(plain.future, plain.past);
      return;
    case 'fold':
      sheet.fold(cellsOf(sheet.document.value)[1]!, !plain.now.folded);
      plain.settle();
      plain.commit({ ...plain.now, folded: !plain.now.folded });
      return;
    case 'save':
      sheet.save();
      plain.settle();
      return;
    case 'reload':
      sheet.settle();
      plain.settle();
  }
}

const stateOf = (document: Document): State => ({
  title: document.title,
  folded: cellsOf(document)[1]?.folded ?? false,
  texts: {
    tip_weight: textAt(document, 'tip_weight') ?? '',
    line_length: textAt(document, 'line_length') ?? '',
  },
});

function compare({ sheet }: { sheet: Sheet }, plain: Plain): void {
  expect(stateOf(sheet.document.value)).toEqual(plain.now);
  expect(sheet.undoSays.value !== undefined).toBe(plain.past.length > 0);
  expect(sheet.redoSays.value !== undefined).toBe(plain.future.length > 0);
}

const read = (text: string): State => {
  const opened = openText(text);
  if (!opened.ok) throw new Error(opened.message);
  return stateOf(opened.document);
};

test('typing, sliding, undo, redo, save and reload in any order leave what lists of states would leave', async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(action, { maxLength: 40 }), async (actions) => {
      const browser = newBrowser({ locks: false });
      const plain = new Plain();
      let page = await openPage(browser);
      for (const each of actions) {
        act(page, plain, each);
        compare(page, plain);
        if (each.does === 'save') expect(read(saved.text)).toEqual(plain.now);
        if (each.does !== 'reload') continue;
        await page.keeper.stored();
        page = await openPage(browser);
        Object.assign(plain, { past: [], future: [], draft: undefined });
        compare(page, plain);
      }
    }),
    { numRuns: 150, seed: 20261125 },
  );
}, 60_000);
