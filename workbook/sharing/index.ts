export { SharingDialog } from './dialog';
