export { makeChart } from './chart';
export { offerChart } from './offer';
export { swapKind } from './swap';
export { makeVariable } from './variable';
