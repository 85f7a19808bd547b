export { LargeDrawing } from './dialog';
