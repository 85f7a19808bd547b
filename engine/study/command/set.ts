import { editLive, faultsOfLive, type Live, numberAt, setLive } from '../../sheet/live';
import { textAt } from '../../sheet/paths';
import type { Library } from '../../sheet/specs';
import { madeAsTyped } from '../../sheet/weighed-as';
import { sentenceOf } from '../run/cause';
import { meant } from './values';

export type SetResult =
  | { readonly ok: true; readonly live: Live; readonly notes: readonly string[] }
  | { readonly ok: false; readonly notes: readonly string[]; readonly faults: readonly string[] };

/** Types texts into a design, as a person would on the page. A text that is at fault is not taken. */
export function setTexts(
  live: Live,
  texts: readonly (readonly [path: string, text: string])[],
  library: Library,
): SetResult {
  const notes: string[] = [];
  const { document, program, names } = live.compiled;
  for (const [path, text] of texts) {
    const before = textAt(document, path);
    const settable = names.filter((name) => name.settable).map((name) => name.path);
    if (before === undefined) {
      return {
        ok: false,
        notes,
        faults: [`Nothing is called ${path} that a text can be typed into.${meant(path, settable)}`],
      };
    }
    if (before.trim() !== '' && !program.constants.has(path)) {
      notes.push(`${path} held the formula “${before}”; now it holds “${text}”.`);
    }
  }
  const edited = asMade(setLive(live, texts, library).live, texts, library);
  const set = new Set(texts.map(([path]) => path));
  const faults = faultsOfLive(edited).filter((fault) => fault.state === 'fault' && set.has(fault.path));
  if (faults.length > 0) return { ok: false, notes, faults: faults.map(sentenceOf) };
  return { ok: true, live: edited, notes };
}

/** What is weighed is made of what it is made of now. */
function asMade(live: Live, texts: readonly (readonly [path: string, text: string])[], library: Library): Live {
  const { document } = live.compiled;
  const made = madeAsTyped(
    document,
    texts.map(([path]) => path),
    (path) => numberAt(live, path),
  );
  return made === document ? live : editLive(live, made, library).live;
}
