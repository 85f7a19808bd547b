export { CellView } from './cell-view';
export { type Verdict, verdict } from './check/verdict';
export { DrawingView } from './drawing/view';
export { AddHere, columnOf, commandsOf, focusContent, gapsOf, standingDrawing, TitleForm } from './frame/index';
export { kindWords } from './kind-words';
export { blockOffer, type Offer, plainOffers } from './new/index';
