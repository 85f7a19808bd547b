export { ListeningDialog } from './dialog';
