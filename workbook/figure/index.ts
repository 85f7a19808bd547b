export { FigureDialog } from './dialog';
