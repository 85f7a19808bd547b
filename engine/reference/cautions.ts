import type { AnyBlock } from '../blocks/block';
import { cautionsOf } from '../blocks/cautions';
import { fillCaution } from '../blocks/fill-caution';
import type { Chapter } from './chapter';

/** All cautions in one place; on the sheet each stands beside the results that it bears on. */
export const cautionsChapter = (blocks: readonly AnyBlock[]): Chapter => ({
  id: 'cautions',
  group: 'Reading this',
  title: 'Cautions',
  pieces: [
    {
      kind: 'list',
      items: cautionsOf(blocks).flatMap(({ sentences }) => sentences.map((each) => fillCaution(each, () => undefined))),
    },
  ],
});
