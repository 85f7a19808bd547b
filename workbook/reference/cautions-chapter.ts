import type { Chapter } from '../../engine/index';
import { cautions, fillCaution } from '../page/standing/cautions';

/** All cautions in one place; on the sheet each stands beside the results that it bears on. */
export const cautionsChapter: Chapter = {
  id: 'cautions',
  group: 'Reading this',
  title: 'Cautions',
  pieces: [
    {
      kind: 'list',
      items: cautions.flatMap(({ sentences }) => sentences.map((sentence) => fillCaution(sentence, () => undefined))),
    },
  ],
};
