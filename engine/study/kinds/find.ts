import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { StudyCell, StudyWords } from './kind';

/** The study of this kind and name, or the sentence that says that there is none or what is wrong with its cell. */
export function findStudy<C extends StudyCell>(
  { compiled }: Live,
  { kind, words }: { readonly kind: C['kind']; readonly words: StudyWords },
  name: string,
): C | string {
  const all = cellsOf(compiled.document).filter((each): each is C => each.kind === kind);
  const cell = all.find((each) => each.name === name);
  if (!cell) {
    const known = all.map((each) => each.name);
    return `There ${words.none} called “${name}”. ${known.length === 0 ? 'This design has none.' : `The ${words.all} are ${known.join(', ')}.`}`;
  }
  return compiled.faults.find((each) => each.cell === cell.id)?.message ?? cell;
}
