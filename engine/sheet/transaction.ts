import { type ArrangeChange, arrange } from './arrange';
import { withText } from './baseline';
import type { Document } from './document';
import { freeze } from './freeze';
import { textAt } from './paths';

/** Everything of a document but its sheets and what says which format it is. `null` takes a part away. */
export type Head = {
  readonly [K in Exclude<keyof Document, 'sheets' | 'format' | 'version'>]?: undefined extends Document[K]
    ? Document[K] | null
    : Document[K];
};

/** One edit, as plain data. */
export type Change =
  | ArrangeChange
  | { readonly change: 'head'; readonly head: Head }
  | { readonly change: 'text'; readonly path: string; readonly text: string }
  /** Another design in place of this one. */
  | { readonly change: 'design'; readonly document: Document };

export interface Changed {
  readonly document: Document;
  /** Takes the edit back: applying it to `document` gives the document from before. */
  readonly inverse: Change;
}

/** Applies one edit. Throws RangeError for a place that isn't there: a mistake of the program, not of a person. */
export function applyChange(document: Document, change: Change, options: { readonly frozen?: boolean } = {}): Changed {
  const changed = apply(document, change);
  return options.frozen ? { ...changed, document: freeze(changed.document) } : changed;
}

/** Applies edits one after another; their inverses come in the order in which they have to be applied. */
export function applyChanges(
  document: Document,
  changes: readonly Change[],
  options: { readonly frozen?: boolean } = {},
): { readonly document: Document; readonly inverse: readonly Change[] } {
  const inverse: Change[] = [];
  let now = document;
  for (const change of changes) {
    const changed = applyChange(now, change, options);
    now = changed.document;
    inverse.unshift(changed.inverse);
  }
  return { document: now, inverse };
}

function apply(document: Document, change: Change): Changed {
  switch (change.change) {
    case 'head':
      return setHead(document, change.head);
    case 'text':
      return setText(document, change.path, change.text);
    case 'design':
      return { document: change.document, inverse: { change: 'design', document } };
    default:
      return arrange(document, change);
  }
}

function setHead(document: Document, head: Head): Changed {
  const before: Record<string, unknown> = {};
  const after: Record<string, unknown> = { ...document };
  for (const [key, value] of Object.entries(head)) {
    before[key] = document[key as keyof Document] ?? null;
    if (value === null || value === undefined) delete after[key];
    else after[key] = value;
  }
  return { document: after as unknown as Document, inverse: { change: 'head', head: before as Head } };
}

function setText(document: Document, path: string, text: string): Changed {
  const before = textAt(document, path);
  const changed = withText(document, path, text);
  if (before === undefined || !changed) throw new RangeError(`No text can stand at ${path}`);
  return { document: changed, inverse: { change: 'text', path, text: before } };
}
