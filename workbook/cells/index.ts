export { CellView } from './cell-view';
export { DrawingView } from './drawing';
export { AddHere, columnOf, commandsOf, focusContent, gapsOf, standingDrawing, TitleForm } from './frame/index';
export { kindWords } from './kind-words';
export { blockOffer, type Offer, plainOffers } from './new/index';
export { type Verdict, verdict } from './verdict';
