export {
  type Chapter,
  fieldAnchor,
  type ReferenceService,
  resultAnchor,
} from './chapter';
export { makeReference } from './reference';
