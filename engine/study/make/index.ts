export { makeChart } from './chart';
export { offerChart } from './offer';
export { makeVariable } from './variable';
