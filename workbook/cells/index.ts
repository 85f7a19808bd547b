export { CellView } from './cell-view';
export { DrawingView } from './drawing';
export { kindWords } from './kind-words';
export { type Verdict, verdict } from './verdict';
