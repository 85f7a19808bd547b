export { FigureDialog } from './dialog';
export { NewsletterDialog } from './newsletter/dialog';
