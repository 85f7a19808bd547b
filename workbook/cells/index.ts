export { CellView } from './cell-view';
export { kindWords } from './kind-words';
export { type Verdict, verdict } from './verdict';
export { DrawingView } from './drawing';
