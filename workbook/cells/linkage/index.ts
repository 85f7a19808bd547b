export { LinkagePicture } from './picture';
