import * as v from 'valibot';
import { studyFiles } from './files';
import { type Study, studySchema } from './study';

export { askedOf } from './asked';
export { placeStudy } from './place';
export { newModel, standIn } from './roles';
export { slideIn } from './slides';

let read: readonly Study[] | undefined;

/** Every study, in the order of the builder's year; read when somebody asks first. */
export function studies(): readonly Study[] {
  read ??= studyFiles.map((text) => v.parse(studySchema, JSON.parse(text)));
  return read;
}
