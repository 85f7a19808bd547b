export { BlockPicture, fetchPicture } from './block-picture';
