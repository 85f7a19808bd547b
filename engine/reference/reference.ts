import { blocks } from '../blocks/registry';
import { tables } from '../library/index';
import { bandsChapter } from './bands';
import { blockChapter } from './blocks';
import { cautionsChapter } from './cautions';
import type { Chapter } from './chapter';
import { tableChapter } from './data';
import { fitChapter } from './fit';
import { formulasChapter } from './formulas';
import { limitsChapter } from './limits';
import { listeningChapter } from './listening';
import { namesChapter } from './names';
import { partsChapter } from './parts';
import { bladeShapesChapter, propellerAgreementChapter } from './propellers';
import { signsChapter } from './signs';
import { spreadsChapter } from './spreads';
import { unitsChapter } from './units';
import { unpartedChapter } from './unparted';

/** Every chapter in reading order, made from the declarations: nothing that it says is written down a second time. */
export function makeReference(): readonly Chapter[] {
  return [
    cautionsChapter(blocks),
    signsChapter,
    namesChapter(blocks),
    bandsChapter(blocks),
    limitsChapter(blocks),
    partsChapter(),
    spreadsChapter(),
    fitChapter,
    listeningChapter(),
    ...blocks.map(blockChapter),
    formulasChapter(),
    unitsChapter(),
    ...tables.map(tableChapter),
    bladeShapesChapter(),
    propellerAgreementChapter(),
  ].map(unpartedChapter);
}
