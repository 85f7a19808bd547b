import type { AnyBlock } from '../../blocks/block';
import type { Document } from '../../sheet/document';
import { carriesFuel, driveOf } from './drive';
import { namedText } from './names';
import type { Study } from './study';
import type { StudyTold } from './told';

/** A study as it is asked of one design. */
export function askedOf(study: Study, document: Document, blocks: readonly AnyBlock[]): StudyTold {
  const meant = new Map([['drive', { path: '', title: driveOf(document, blocks) }]]);
  return {
    name: study.name,
    question: namedText(study.question, meant),
    tells: namedText(study.tells, meant),
    unfit: study.fuel && !carriesFuel(document) ? NO_FUEL : '',
  };
}

const NO_FUEL =
  'Not for this design: no part of its weights is fuel. If it carries some, tick “it is fuel” at that part of the table of weight and balance.';
