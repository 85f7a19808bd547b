export { makeChart } from './chart';
export { offerChart } from './offer';
export { textOf } from './seeds';
export { settledNames } from './settled-names';
export { swapKind } from './swap';
export { makeVariable } from './variable';
