export { blockOffer } from './block/offer';
export { CellView } from './cell-view';
export { holdsOf, verdict } from './check/verdict';
export { DrawingView } from './drawing/view';
export { AddHere, columnOf, commandsOf, focusContent, gapsOf, standingDrawing, TitleForm } from './frame/index';
export { lineOf } from './line';
export { plainOffers } from './offers';
export type { Offer } from './shared/new-cell';
