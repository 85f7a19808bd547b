/**
 * The engine's door for the page: types of the protocol and the document, edits, units and the syntax of formulas.
 * Nothing here computes a design; that is done behind `EngineService`, in a worker.
 */
export type { Shape } from './blocks/block';
export { fillCaution } from './blocks/fill-caution';
export { TANK_PARTS, TANK_VIEWS, type TankPart, type TankView } from './blocks/tank/parts';
export type { Template } from './blocks/template';
export {
  type Expression,
  type FormulaFault,
  type FormulaFunction,
  formulaParser,
  functionNamed,
  functions,
  keptText,
  literalIn,
  namesOf,
  printFormula,
  type Repair,
  readEntry,
  readText,
} from './formula/index';
export { type Between, csvLine, readCsvLines } from './library/csv';
export type { EngineService, FirstDesignService } from './protocol';
export {
  type Chapter,
  type EntryPiece,
  type EquationPiece,
  fieldAnchor,
  type Piece,
  type ReferenceService,
  resultAnchor,
  type TablePiece,
} from './reference/chapter';
export { baselineOf } from './sheet/baseline';
export { capital, inSentence, listed } from './sheet/called';
export {
  type ChartNeeds,
  type ChartSource,
  chartNeeds,
  chartSource,
  filledIn,
  fittedResults,
  GUESS_WORDS,
  guessOptionPath,
  guessWordsName,
  isLogName,
  keptPath,
  leverPath,
  lineSetPath,
  logErrorPath,
  logResults,
  logRowPath,
  MOST_GUESSES,
  MOST_LOG_ROWS,
  MOST_SPREAD_SAMPLES,
  mendPath,
  type NotePiece,
  noteFormulas,
  notePieces,
  PART_BARS,
  type PartField,
  pairPath,
  partFields,
  pullTestPath,
  reasonPath,
  saidPath,
  spreadPath,
  type Text,
  weighingPaths,
} from './sheet/cells/index';
export { copyOfCell } from './sheet/copy';
export { copyingSheet } from './sheet/copy-sheet';
export { cornerAt, cornerKept, cornersText, cornerTexts, readCorners } from './sheet/corners';
export { type OpenedDesigns, openDesigns, serialiseDesigns, tooLargeForAny } from './sheet/designs-file';
export { type Difference, differencesOf, movedSince } from './sheet/differences';
export type {
  Axis,
  BestCell,
  BestGoal,
  BlockCell,
  Cell,
  CellKind,
  ChartCell,
  CheckCell,
  ChoiceCell,
  ChoiceOption,
  Document,
  DrawingCell,
  FitCell,
  FormulaCell,
  Guess,
  GuessCell,
  GuessOption,
  Kept,
  Layer,
  LeverRow,
  LeversCell,
  LeverWay,
  LineSet,
  LogCell,
  LogColumn,
  LogRow,
  LogTaken,
  Measure,
  MendsCell,
  NoteCell,
  OwnRow,
  Part,
  PartShape,
  PartsCell,
  PullTest,
  Sheet,
  SpreadCell,
  SpreadKind,
  SpreadPair,
  SpreadRow,
  SweepCell,
  TableCell,
  TracedPlan,
  Variable,
  VariablesCell,
  Variant,
  VariantsCell,
  WeighingCell,
} from './sheet/document';
export {
  BEST_WAYS,
  FORMAT,
  GUESS_PLACES,
  GUESS_WAYS,
  LARGEST_PICTURE,
  LEVER_WAYS,
  MEASURES,
  MEND_WAYS,
  PART_SHAPES,
  SPREAD_KINDS,
  VERSION,
} from './sheet/document';
export { type Opened, openText, serialise } from './sheet/file';
export { freeId, freeName, isOwnName, nameFromTitle, takenNames } from './sheet/free-names';
export { keepingBaseline } from './sheet/keep-baseline';
export { type BlockLinks, keptLinks, roleOf } from './sheet/links';
export { nameFault } from './sheet/names';
export { textAt } from './sheet/paths';
export { leverEffect, leverRatio, rankLevers } from './sheet/rank-levers';
export { sheetRemoval } from './sheet/remove-sheet';
export { type Renaming, rename } from './sheet/rename';
export { retitleCell } from './sheet/retitle';
export { cellsOf, freeSheetId, placeOf, sheetOfPiece, sheetWith } from './sheet/sheets';
export {
  applyChange,
  applyChanges,
  type Change,
  type Changed,
  type Head,
} from './sheet/transaction';
export { type Use, usesOf } from './sheet/uses';
export type { FileProblem } from './sheet/validate';
export { readVariants, writeVariants } from './sheet/variant-text';
export {
  addingVariants,
  chartingVariant,
  editingVariant,
  freeVariantName,
  keepingVariant,
  MOST_ON_CHARTS,
  removingVariant,
  renamingVariant,
  setNow,
  type VariantTexts,
  variantAsBaseline,
  variantNameFault,
} from './sheet/variants';
export { isRemade, remadeSentences, weighedAsTitle, weighingPart } from './sheet/weighed-as';
export { keptWhenWeighed } from './sheet/weighed-sizes';
export type { BestAnswer, BestProgress, TriedDesign } from './study/best/told';
export { noneSentences } from './study/best/words';
export {
  type DayAnswer,
  type DayCard,
  type DayForm,
  type DaySetUp,
  GROUNDS,
  type Ground,
  type RaceCard,
} from './study/day/told';
export type { Culprit, Reconciliation } from './study/design/culprit';
export type { ForgottenThing } from './study/design/forgotten-thing';
export type { PlacedTemplate } from './study/design/templates';
export type { FirstDesignAnswer, FirstDesignForm, FormField, FormProblem } from './study/first-design/told';
export type { FitAnswer, FittedFactor, FittedNumber, FlownAnswer } from './study/fit/told';
export type {
  DesignDifference,
  DesignDifferences,
  DesignTold,
  HangarService,
  KeyFigure,
  PieceOffer,
  TakingAnswer,
} from './study/hangar/told';
export type {
  HeardFlight,
  HeardLap,
  ListeningQuestion,
  ListeningService,
  NoLaps,
  Sound,
  Told,
  Unheard,
} from './study/listening/told';
export type { ChartOffer, ChartWish, MakingAnswer, MakingPlace } from './study/make/told';
export { MEND_COSTS, type Mend, type MendCost, type MendsAnswer } from './study/mends/told';
export { MAKE, type StudyAnswer, type StudyAsk, type StudyTold } from './study/place/told';
export { withoutNumbers, withRanges } from './study/tables/reasons';
export type { KeptRange, TableAnswer, TableColumn, TableFormat, TableView } from './study/tables/told';
export type { Shown, Snapshot, SweepRequest, VariantGhost, VariantGhosts } from './study/told';
export { OBSERVATIONS, type Observation, type TrimAnswer } from './study/trim/told';
export type { CgStep, WeighedPart, WeighingAnswer } from './study/weighing/told';
export type {
  BlockDescription,
  ColumnDescription,
  Description,
  Fault,
  FieldDescription,
  LeverChange,
  LeversTold,
  NameInfo,
  OutlineDescription,
  ResultDescription,
  RoleCaution,
  RowDescription,
  SpreadFactor,
  SpreadOfResult,
  SpreadTold,
  SweepAxisValues,
  SweepProgress,
  TableDescription,
  TraceAnswer,
  TraceColumn,
  TraceDescription,
  VariantChange,
  VariantColumn,
  VariantShares,
  VariantsTold,
} from './terms/index';
export { NOT_COMPUTED } from './terms/index';
export {
  bound,
  type Dimension,
  describeDimension,
  differenceFromSI,
  everydayUnit,
  type FormatOptions,
  formatNumber,
  formatQuantity,
  fromSI,
  inUnitsOf,
  LENGTH,
  sameDimension,
  shownUnit,
  toSI,
  type Unit,
  type UnitSet,
  unitNamed,
  units,
  unparted,
  withUnit,
  withWay,
  writeQuantity,
} from './units/index';
