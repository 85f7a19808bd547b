import { type AnyBlock, type AnySpecs, isCurve, isLink, isOption } from '../blocks/block';
import type { Chapter } from './chapter';
import { band } from './quantities';

/** Rules of thumb, gathered from the usual bands of all results. */
export function bandsChapter(blocks: readonly AnyBlock[]): Chapter {
  const rows = new Map<string, readonly string[]>();
  for (const block of blocks) {
    for (const [name, spec] of Object.entries<AnySpecs[string]>(block.results)) {
      if (isLink(spec) || isOption(spec) || isCurve(spec) || !('usual' in spec) || !spec.usual) continue;
      const path = `${block.role ?? block.kind}.${name}`;
      if (!rows.has(path)) rows.set(path, [spec.title, path, band(spec.usual, spec)]);
    }
  }
  return {
    id: 'bands',
    group: 'Reading this',
    title: 'Rules of thumb',
    pieces: [
      {
        kind: 'text',
        text: 'Usual values of such models: common practice, no source. They stand beside the results as a check on what was typed; a good model may lie outside.',
      },
      { kind: 'table', title: 'Usual values', columns: ['result', 'name', 'usually'], rows: [...rows.values()] },
    ],
  };
}
