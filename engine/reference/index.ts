export {
  blockAnchor,
  type Chapter,
  type EntryPiece,
  type EquationPiece,
  fieldAnchor,
  type Piece,
  type ReferenceService,
  resultAnchor,
  type TablePiece,
} from './chapter';
export { makeReference } from './reference';
