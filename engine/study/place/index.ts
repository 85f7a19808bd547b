import * as v from 'valibot';
import { lessonFiles, studyFiles } from './files';
import { type Study, studySchema } from './study';

export { askedOf } from './asked';
export { carriesFuel } from './drive';
export { placeStudy } from './place';
export { linkedRoles, newModel, standIn } from './roles';
export { slideIn } from './slides';
export { stepIn } from './steps';
export { tipWeightIn } from './tip-weight';

const read = new Map<readonly string[], readonly Study[]>();

/** Those of some files, read when somebody asks first. */
function studiesIn(files: readonly string[]): readonly Study[] {
  const known = read.get(files) ?? files.map((text) => v.parse(studySchema, JSON.parse(text)));
  read.set(files, known);
  return known;
}

/** Every study, in the order of the builder's year. */
export const studies = (): readonly Study[] => studiesIn(studyFiles);

/** Every lesson: a study that asks for a guess first, in plain words. */
export const lessons = (): readonly Study[] => studiesIn(lessonFiles);
