export { BlockPicture } from './block-picture';
