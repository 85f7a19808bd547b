import * as v from 'valibot';
import { studyFiles } from './files';
import { type Study, studySchema } from './study';
import type { StudyTold } from './told';

export { placeStudy } from './place';

export const studies: readonly Study[] = studyFiles.map((text) => v.parse(studySchema, JSON.parse(text)));

export const studiesTold: readonly StudyTold[] = studies.map(({ name, question, tells }) => ({
  name,
  question,
  tells,
}));
