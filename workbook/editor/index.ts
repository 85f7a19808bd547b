import type * as Mount from './mount';

export type { EditorRequest, OpenEditor, TextRange } from './request';

type EditorMaker = typeof Mount.mountEditor;

let maker: EditorMaker | undefined;

/** The editor, when it's there already. */
export const editorMaker = (): EditorMaker | undefined => maker;

/** Fetches the editor, which is a file of its own, when somebody is about to type. */
export async function fetchEditor(): Promise<EditorMaker> {
  maker ??= (await import('./mount')).mountEditor;
  return maker;
}
