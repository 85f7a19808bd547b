export { beginning, newLine, newVariable } from './first-contents';
export { blockOffer, type Offer, plainOffers } from './offers';
