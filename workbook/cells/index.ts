export { blockOffer } from './block/offer';
export { CellView } from './cell-view';
export { holdsOf, underWords, verdict } from './check/verdict';
export { LargeAsked } from './drawing/large-asked';
export { placedParts } from './drawing/placed-parts';
export { DrawingView } from './drawing/view';
export {
  AddHere,
  columnOf,
  commandsOf,
  focusBalloon,
  focusContent,
  gapsOf,
  standingDrawing,
  TitleForm,
} from './frame/index';
export { lineOf } from './line';
export { putReadings } from './log/readings';
export { plainOffers } from './offers';
export type { Offer } from './shared/new-cell';
export { NumberMenu } from './shared/number-menu';
export { AddFrom } from './shared/pick';
export { Tick } from './shared/tick';
export { nameOptions } from './shared/wanted';
