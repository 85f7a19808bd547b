export { beginning, newLine, newVariable } from './first-contents';
export { newLogRow, USUAL_ERRORS } from './first-log';
export { blockOffer, type Offer, plainOffers } from './offers';
