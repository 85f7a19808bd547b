export { FullSizeDialog } from './dialog';
