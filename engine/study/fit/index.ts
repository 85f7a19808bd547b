export { fitNow } from './fit';
export { type Fits, startFits } from './serve';
